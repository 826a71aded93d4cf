#include "app/desktop/help/help_text.h"

#include <QCoreApplication>

namespace app::desktop {
namespace {

using Kind = StrandSample::Kind;

struct HelpWords {
    Q_DECLARE_TR_FUNCTIONS(Help)
};

HelpText::Shape applied()
{
    return {Kind::Applied, HelpWords::tr("Hatched: the mixture is being applied.")};
}

HelpText::Shape water()
{
    return {Kind::Water,
            HelpWords::tr("The rinse line: water. Zones that are rinsed together end at the same shore.")};
}

HelpText::Shape window()
{
    return {
        Kind::Window,
        HelpWords::tr("Below each strand its limits: the bracket is the least, the wedge the target, the bar "
                      "the most it may develop.")};
}

HelpText setupText()
{
    HelpText text;
    text.title = HelpWords::tr("Set-up: what is wanted, and the plan that comes of it");
    text.paragraphs = {
        HelpWords::tr(
            "In the table: what goes on which zone, how long applying takes you, and how long each zone "
            "may develop. Take the times from the leaflet of the product."),
        HelpWords::tr(
            "Below it: the plan. It says when to begin each zone, so that all of them come to the basin "
            "on time with one pair of hands. It is made again after every change."),
        HelpWords::tr(
            "Next: when the plan looks right, start the lanes. They tell you what to do and when. Until "
            "then nothing sounds, and everything can be undone."),
    };
    text.shapes = {
        applied(),
        {Kind::Develops,
         HelpWords::tr("A strand with fibres: the zone develops. It swells until the target.")},
        water(),
        window(),
        {Kind::Broken, HelpWords::tr("Dashed: that limit is not kept.")},
        {Kind::Looks, HelpWords::tr("An eye: look at the hair, a strand test.")},
        {Kind::Late, HelpWords::tr("A box with a wave: a late job, such as emulsifying.")},
        {Kind::Forecast, HelpWords::tr("A bar with two ends: water comes between them in nine runs of ten.")},
        {Kind::Hands, HelpWords::tr("Boxes on a name: what these hands do. Dashed is on another head.")},
    };
    text.keys = {
        {{"runStart"}, HelpWords::tr("start the lanes")},
        {{}, HelpWords::tr("change the cell, go to the next"), {Qt::Key_Enter, Qt::Key_Tab}},
        {{"undo"}, HelpWords::tr("undo the last change")},
        {{"runBefore"}, HelpWords::tr("before the start: what is open")},
        {{"soundCheckMenu"}, HelpWords::tr("sound check")},
        {{"fileOpen", "fileSave"}, HelpWords::tr("open, save")},
        {{"filePrint"}, HelpWords::tr("print the plan")},
        {{"fileRecords"}, HelpWords::tr("record cards")},
        {{"toSetup", "toLanes"}, HelpWords::tr("to Set-up, to Lanes")},
        {{"tourMenu"}, HelpWords::tr("a short tour on a demo")},
        {{"cautionsMenu"}, HelpWords::tr("the cautions")},
    };
    return text;
}

std::vector<HelpText::Key> lanesKeys()
{
    return {
        {{}, HelpWords::tr("it is done: answer the one thing to do"), {Qt::Key_Enter, Qt::Key_Space}},
        {{"leave", "lookAgain", "rinseZone"},
         HelpWords::tr("a look: leave it on, look again, rinse this zone")},
        {{"sooner", "later"}, HelpWords::tr("look again a minute sooner, later")},
        {{"leaveAll"}, HelpWords::tr("leave all that were looked at together")},
        {{"toneKey"}, HelpWords::tr("the tone seen")},
        {{"leaveOut"}, HelpWords::tr("skip this look or late job")},
        {{"quiet", "mutedOffer1"}, HelpWords::tr("quiet for a while; let it sound again")},
        {{"earlier"}, HelpWords::tr("the last answer was earlier")},
        {{"undo"}, HelpWords::tr("undo the last answer")},
        {{"moreButton"}, HelpWords::tr("more: somebody goes or comes, heat, a zone more, an earlier answer")},
        {{"askChoices"}, HelpWords::tr("what can be chosen, where not every limit can hold")},
        {{"outcomeKey"}, HelpWords::tr("how it turned out")},
        {{"farKey"}, HelpWords::tr("to be read from afar, and back")},
        {{"filePrint"}, HelpWords::tr("print the run as it stands")},
        {{"toSetup", "toLanes"}, HelpWords::tr("to Set-up, to Lanes")},
        {{"cautionsMenu"}, HelpWords::tr("the cautions")},
    };
}

HelpText lanesText()
{
    HelpText text;
    text.title = HelpWords::tr("Lanes: what to do now, and how long is left");
    text.paragraphs = {
        HelpWords::tr(
            "At the top is the one thing to do. Do it, then press the large button or Enter. Times count "
            "from the moment you press."),
        HelpWords::tr(
            "Each lane is a zone. The large digits count down to what comes next for it; with a plus "
            "they count how long it is overdue."),
        HelpWords::tr(
            "When an alarm fills the window: do what it says, then answer it. It sounds until then. "
            "Pressed late or by mistake? Say that it was earlier, or undo it; the plan is made again."),
        HelpWords::tr(
            "Next: once all is rinsed and dry, say how it turned out and put the run away. Its record "
            "card is kept."),
    };
    text.shapes = {
        applied(),
        {Kind::Filled, HelpWords::tr("Filled as far as it has developed. The upright line is now.")},
        water(),
        window(),
        {Kind::Looks, HelpWords::tr("An eye: look at the hair. With a tick: done.")},
        {Kind::Late, HelpWords::tr("A box with a wave: a late job, such as emulsifying.")},
        {Kind::Broken, HelpWords::tr("Dashed: that limit is not kept.")},
    };
    text.keys = lanesKeys();
    return text;
}

HelpText recordsText()
{
    HelpText text;
    text.title = HelpWords::tr("Record cards: what was done, and how it turned out");
    text.paragraphs = {
        HelpWords::tr(
            "Every run that was ended has a card: what each zone got, when it went on and when water "
            "came, what was seen, and how it turned out."),
        HelpWords::tr(
            "Next: start the next coat from a card. What was noted for next time stays in view there."),
    };
    text.shapes = {
        {Kind::Develops, HelpWords::tr("The strands as they really went.")},
        {Kind::Planned, HelpWords::tr("Dashes: where the first plan had them.")},
        window(),
        {Kind::Looks, HelpWords::tr("An eye: look at the hair. With a tick: done.")},
    };
    text.keys = {
        {{"recordsAgain"}, HelpWords::tr("start the next coat from it")},
        {{"recordsOutcome"}, HelpWords::tr("how it turned out")},
        {{"recordsPrint", "recordsPdf"}, HelpWords::tr("print it, save it as a PDF")},
        {{}, HelpWords::tr("another card"), {Qt::Key_Up, Qt::Key_Down}},
    };
    return text;
}

HelpText soundText()
{
    HelpText text;
    text.title = HelpWords::tr("Sound check: what each alarm sounds like");
    text.paragraphs = {
        HelpWords::tr(
            "Play each alarm and listen from where you work, at the basin too, with the water running and "
            "the dryer on."),
        HelpWords::tr(
            "If you heard them all, say so: then only water, a limit, or a step that is left standing fills "
            "the screen. Until somebody has said so, every step that is due fills it at once."),
        HelpWords::tr(
            "If you hear nothing: look for the volume, the loudspeaker and its cable. You can go on without "
            "sound and watch the screen."),
        HelpWords::tr("Next: start the lanes. The check can be made again at any time, from the menu."),
    };
    text.keys = {
        {{"playReady", "playStep", "playLook", "playWater", "playLimit"},
         HelpWords::tr("play an alarm, from the softest to the loudest")},
        {{}, HelpWords::tr("they were heard"), {Qt::Key_Enter}},
        {{"notHeard"}, HelpWords::tr("what to do where nothing is heard")},
        {{"passOver"}, HelpWords::tr("go on without sound")},
    };
    return text;
}

HelpText textFor(HelpFor page)
{
    switch (page) {
    case HelpFor::Setup: return setupText();
    case HelpFor::Lanes: return lanesText();
    case HelpFor::Records: return recordsText();
    case HelpFor::Sound: return soundText();
    }
    return {};
}

}  // namespace

HelpText helpText(HelpFor page)
{
    HelpText text = textFor(page);
    text.keys.push_back({{"helpBack", "helpOn"}, HelpWords::tr("read on in this help, and back")});
    text.keys.push_back({{"pageHelp"}, HelpWords::tr("this help, and away with it")});
    return text;
}

}  // namespace app::desktop
