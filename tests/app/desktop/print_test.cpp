#include "app/desktop/print/page_layout.h"
#include "app/desktop/print/paper.h"
#include "app/desktop/print/plan_sheet.h"
#include "app/session/time_zones.h"
#include "tests/app/desktop/pdf_text.h"
#include "tests/app/desktop/rig.h"

#include <QDialog>
#include <QFile>
#include <QFontMetricsF>
#include <QImage>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QPushButton>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>

using namespace app::desktop;
using namespace app::desktop::print;

namespace {

const auto anyZones = std::make_shared<app::session::QtTimeZones>();

/// Of an A4 page with the usual margins, in 1/96 inch.
constexpr QSizeF a4{695, 1024};

core::stagger::Plan planOf(const std::vector<core::service::Service>& services)
{
    core::stagger::Question question;
    question.services = services;
    question.now = rig::morning;
    question.guarantee = services.front().coats.front().zones.size() < 6;
    return core::stagger::plan(question, {.conflicts = 3000, .stop = {}}).value();
}

std::vector<Sheet> sheetsOf(const rig::Rig& rig, const std::vector<core::service::Service>& services)
{
    return planSheets({services, planOf(services)}, *rig.theme, anyZones);
}

/// So many zones, each with long words to say of it, late jobs and a bowl of its own.
core::service::Service longService(int count)
{
    core::service::Service service = rig::Rig::service();
    core::service::Coat& coat = service.coats.front();
    coat.bowls.clear();
    const core::service::Zone first = coat.zones.front();
    coat.zones.clear();
    const auto minutes = [](int length) { return rig::Seconds{length * 60}; };
    for (int place = 0; place < count; ++place) {
        const std::string name = "Section " + std::to_string(place + 1) + " behind the ear";
        coat.bowls.push_back({name + " mixture", minutes(1), minutes(180),
                              "30 g of the lightest shade, 60 g developer, stirred until it is smooth"});
        core::service::Zone zone = first;
        zone.name = name;
        zone.bowl = static_cast<std::size_t>(place);
        zone.apply = {minutes(2), minutes(2), minutes(2)};
        zone.develop = {minutes(5), minutes(30), minutes(200)};
        zone.firstStrandMost = minutes(210);
        zone.lastStrandLeast = minutes(5);
        coat.zones.push_back(zone);
    }
    return service;
}

QString textOf(const std::vector<Page>& pages)
{
    QStringList lines;
    for (const Page& page : pages)
        for (const PlacedText& text : page.texts)
            lines << text.text;
    return lines.join(QLatin1Char{' '});
}

/// All on the page, and nothing over anything else.
void expectTidy(const std::vector<Page>& pages, const QSizeF& size)
{
    const QRectF whole{QPointF{0, 0}, size};
    for (const Page& page : pages) {
        std::vector<std::pair<QRectF, QString>> boxes;
        for (const PlacedText& text : page.texts) {
            boxes.emplace_back(text.box, text.text);
            EXPECT_LE(QFontMetricsF{paperFont(text.pixels, text.bold)}.horizontalAdvance(text.text),
                      text.box.width() + 0.01)
                << text.text.toStdString();
        }
        for (const PlacedDrawing& drawing : page.drawings)
            boxes.emplace_back(drawing.box, QStringLiteral("a drawing"));
        for (std::size_t one = 0; one < boxes.size(); ++one) {
            EXPECT_TRUE(whole.contains(boxes[one].first)) << boxes[one].second.toStdString();
            for (std::size_t other = one + 1; other < boxes.size(); ++other)
                EXPECT_FALSE(boxes[one].first.intersects(boxes[other].first))
                    << boxes[one].second.toStdString() << " and " << boxes[other].second.toStdString();
        }
    }
}

TEST(Print, SetsAPlanOnOnePage)
{
    const rig::Rig rig;
    auto service = rig::Rig::service();
    service.coats[0].bowls[0].note = "40 g colour, 60 g developer";
    service.coats[0].bowls[0].potLife = std::chrono::minutes{40};
    const auto sheets = sheetsOf(rig, {service});
    ASSERT_EQ(sheets.size(), 1u);
    const auto pages = layOut(sheets[0], a4);
    EXPECT_EQ(pages.size(), 1u);
    expectTidy(pages, a4);
    EXPECT_EQ(pages[0].drawings.size(), 1u);
    const QString text = textOf(pages);
    for (const char* said : {"Rig", "Apply Root", "Stylist", "40 g colour, 60 g developer", "within 40 min",
                             "The product's own leaflet comes first", "Page 1 of 1"})
        EXPECT_TRUE(text.contains(QLatin1String{said})) << said << " is not in " << text.toStdString();
}

TEST(Print, TellsOfEachTaskWhoWhatFromAndTo)
{
    const rig::Rig rig;
    const std::vector services{rig::Rig::service()};
    const auto plan = planOf(services);
    const Sheet sheet = planSheets({services, plan}, *rig.theme, anyZones).front();
    const auto table = std::ranges::find_if(
        sheet.parts, [](const print::Part& part) { return part.table && part.table->roomToWrite; });
    ASSERT_NE(table, sheet.parts.end());
    ASSERT_EQ(table->table->rows.size(), plan->tasks.size());
    const auto clock = [](core::measure::Instant at) {
        return QString::fromStdString(core::measure::clockText(anyZones->localAt(at, "UTC")));
    };
    for (std::size_t place = 0; place < plan->tasks.size(); ++place) {
        const QStringList& row = table->table->rows[place];
        EXPECT_EQ(row.value(0), clock(plan->tasks[place].start));
        EXPECT_EQ(row.value(1), clock(plan->tasks[place].end));
        EXPECT_EQ(row.value(2), QStringLiteral("Stylist"));
        EXPECT_EQ(row.value(3).toStdString(), taskName(services[0], plan->tasks[place].id));
    }
}

/// What the timetable notes of the rinse.
QString noteOfRinse(const Sheet& sheet)
{
    for (const print::Part& part : sheet.parts)
        for (const QStringList& row : part.table ? part.table->rows : std::vector<QStringList>{})
            if (row.value(3).startsWith(QStringLiteral("Rinse")))
                return row.value(4);
    return {};
}

TEST(Print, TellsWhichZonesTheWaterIsFor)
{
    using core::stagger::TaskKind;
    const rig::Rig rig;
    const std::vector services{rig::Rig::service()};
    const auto plan = planOf(services);
    EXPECT_EQ(noteOfRinse(planSheets({services, plan}, *rig.theme, anyZones).front()),
              QStringLiteral("Root and Ends"));
    core::run::State state;
    state.plan = plan;
    state.progress.dropped = {{.kind = TaskKind::Apply, .item = 0}};
    EXPECT_EQ(noteOfRinse(planSheets({services, plan, {}, state}, *rig.theme, anyZones).front()),
              QStringLiteral("Ends"));
    state.progress.dropped = {};
    state.progress.tasks = {{.id = {.kind = TaskKind::RinseAlone, .item = 1},
                             .start = rig::morning,
                             .end = {},
                             .plannedEnd = {}}};
    EXPECT_EQ(noteOfRinse(planSheets({services, plan, {}, state}, *rig.theme, anyZones).front()),
              QStringLiteral("Root"));
}

TEST(Print, BreaksALongServiceIntoPagesAndLosesNothing)
{
    const rig::Rig rig;
    const auto service = longService(20);
    const Sheet sheet = sheetsOf(rig, {service}).front();
    const auto pages = layOut(sheet, a4);
    EXPECT_GT(pages.size(), 2u);
    expectTidy(pages, a4);
    // As text is broken into lines, words are what can be found again.
    const QString text = textOf(pages);
    for (const auto& zone : service.coats[0].zones)
        EXPECT_GE(text.count(QString::fromStdString(zone.name)), 1) << zone.name;
    EXPECT_EQ(text.count(QStringLiteral("smooth")), 20);
    for (std::size_t page = 0; page < pages.size(); ++page)
        EXPECT_TRUE(text.contains(QStringLiteral("Page %1 of %2").arg(page + 1).arg(pages.size())));
    std::size_t strands = 0;
    for (const Page& page : pages)
        for (const PlacedDrawing& drawing : page.drawings)
            strands += drawing.drawing.picture.strands.size();
    EXPECT_EQ(strands, 20u);
}

TEST(Print, PutsMoreStrandsThanAPageHoldsOnSeveral)
{
    const rig::Rig rig;
    const Sheet sheet = sheetsOf(rig, {longService(32)}).front();
    const auto pages = layOut(sheet, {695, 700});
    expectTidy(pages, {695, 700});
    std::vector<std::string> drawn;
    for (const Page& page : pages)
        for (const PlacedDrawing& drawing : page.drawings)
            for (const auto& strand : drawing.drawing.picture.strands)
                drawn.push_back(strand.name);
    ASSERT_EQ(drawn.size(), 32u);
    for (std::size_t place = 0; place < drawn.size(); ++place)
        EXPECT_EQ(drawn[place], "Section " + std::to_string(place + 1) + " behind the ear");
}

TEST(Print, CutsACellThatIsLongerThanAPageBetweenItsLines)
{
    QStringList words;
    for (int number = 0; number < 1500; ++number)
        words << QStringLiteral("word%1").arg(number);
    Sheet sheet{QStringLiteral("Long"), {}, QStringLiteral("Foot"), {}};
    sheet.parts.push_back(
        {QStringLiteral("Cells"),
         {},
         {},
         Table{{QStringLiteral("A"), QStringLiteral("B")},
               {{QStringLiteral("a"), words.join(QLatin1Char{' '})},
                {QStringLiteral("b"), QStringLiteral("Donaudampfschifffahrt").repeated(9)}}}});
    const auto pages = layOut(sheet, {400, 500});
    expectTidy(pages, {400, 500});
    const QString text = textOf(pages);
    for (const QString& word : words)
        EXPECT_TRUE(text.contains(word + QLatin1Char{' '})) << word.toStdString();
}

TEST(Print, IsTheSameForEverySizeOfTextOnTheScreen)
{
    rig::Rig rig;
    const auto sheet = sheetsOf(rig, {rig::Rig::service()}).front();
    const auto usual = layOut(sheet, a4);
    rig.theme->setTextSize(200);
    const auto large = layOut(sheet, a4);
    rig.theme->setTextSize(100);
    ASSERT_EQ(large.size(), usual.size());
    expectTidy(large, a4);
    for (std::size_t text = 0; text < usual[0].texts.size(); ++text)
        EXPECT_EQ(large[0].texts[text].box.size(), usual[0].texts[text].box.size());
}

/// How much of a page is not white, from 0 to 1.
double inkOf(const Page& page, const QSizeF& size)
{
    QImage image{size.toSize(), QImage::Format_RGB32};
    image.fill(Qt::white);
    QPainter painter{&image};
    paint(painter, page, paperColours());
    painter.end();
    double ink = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            ink += 1 - qGray(image.pixel(x, y)) / 255.0;
    return ink / (image.width() * image.height());
}

TEST(Print, SparesInk)
{
    rig::Rig rig;
    const auto pages = layOut(sheetsOf(rig, {rig::Rig::service()}).front(), a4);
    const double light = inkOf(pages[0], a4);
    EXPECT_GT(light, 0.005);
    EXPECT_LT(light, 0.08);
    rig.theme->choose(Theme::Choice::Dark);
    EXPECT_DOUBLE_EQ(inkOf(pages[0], a4), light) << "whatever the screen looks like";
    rig.theme->choose(Theme::Choice::System);
}

TEST(Print, WritesAPdfWithAPageForEachHeadAndItsText)
{
    rig::Rig rig;
    auto one = rig::Rig::service();
    auto other = rig::Rig::service();
    one.head.name = "The ghost";
    other.head.name = "The countess";
    const auto sheets = sheetsOf(rig, {one, other});
    ASSERT_EQ(sheets.size(), 2u);
    const QString path = rig.folder.filePath(QStringLiteral("plan.pdf"));
    EXPECT_EQ(writePdf(sheets, path, usualPaper(QLocale{QStringLiteral("de_DE")})), std::nullopt);
    const pdf::Read read = pdf::read(path);
    EXPECT_EQ(read.pages, 2);
    ASSERT_EQ(read.sizes.size(), 2);
    EXPECT_NEAR(read.sizes[0].width(), 595, 1);  // A4 in points.
    EXPECT_NEAR(read.sizes[0].height(), 842, 1);
    for (const char* said : {"The ghost", "The countess", "Apply Root", "Page 1 of 1"})
        EXPECT_TRUE(read.text.contains(QLatin1String{said})) << said;
}

TEST(Print, LeavesWhatWasThereWhereItCannotBeWritten)
{
    rig::Rig rig;
    const auto sheets = sheetsOf(rig, {rig::Rig::service()});
    const auto wrong =
        writePdf(sheets, rig.folder.filePath(QStringLiteral("nowhere/plan.pdf")), usualPaper(QLocale::c()));
    ASSERT_TRUE(wrong);
    EXPECT_TRUE(wrong->contains(QStringLiteral("was not written")));
}

// Unicode CLDR, supplemental data, paperSize.
TEST(Paper, IsWhatIsUsualWhereTheLanguageIsSpoken)
{
    const auto sizeFor = [](const char* locale) {
        return usualPaper(QLocale{QLatin1String{locale}}).pageSize().id();
    };
    EXPECT_EQ(sizeFor("en_GB"), QPageSize::A4);
    EXPECT_EQ(sizeFor("de_DE"), QPageSize::A4);
    EXPECT_EQ(sizeFor("en_US"), QPageSize::Letter);
    EXPECT_EQ(sizeFor("fr_CA"), QPageSize::Letter);
    EXPECT_EQ(sizeFor("es_ES"), QPageSize::A4);
}

class PrintWindow : public testing::Test {
protected:
    PrintWindow() { rig.window->document().replace(rig::Rig::service(), {}); }

    pdf::Read saved()
    {
        const QString path = rig.folder.filePath(QStringLiteral("window.pdf"));
        rig.window->printing().savePdfTo(path);
        return pdf::read(path);
    }

    rig::Rig rig;
};

TEST_F(PrintWindow, SavesThePlanThatSetUpShows)
{
    ASSERT_TRUE(rig::Rig::wait([&] { return rig.find<QPushButton>("start")->isEnabled(); }));
    const pdf::Read read = saved();
    EXPECT_EQ(read.pages, 1);
    EXPECT_TRUE(read.text.contains(QStringLiteral("Apply Ends")));
    EXPECT_FALSE(read.text.contains(QStringLiteral("As it stood")));
}

TEST_F(PrintWindow, SaysThatThereIsNoPlanYet)
{
    rig.window->document().edit(QStringLiteral("nonsense"),
                                [](auto& service) { service.coats[0].zones.clear(); });
    EXPECT_EQ(saved().pages, 0);
    EXPECT_TRUE(rig::Rig::wait([&] { return rig.find<QWidget>("printMessage") != nullptr; }));
}

TEST_F(PrintWindow, SavesALiveRunAsItStands)
{
    rig.startLanes();
    QTest::keyClick(rig.window->focusWidget(), Qt::Key_Return);
    const pdf::Read read = saved();
    EXPECT_EQ(read.pages, 1);
    EXPECT_TRUE(read.text.contains(QStringLiteral("As it stood")));
    EXPECT_TRUE(read.text.contains(QStringLiteral("goes on")));
}

TEST_F(PrintWindow, AsksForAPrinterAndStopsNothing)
{
    rig.startLanes();
    QTest::keyClick(rig.window.get(), Qt::Key_P, Qt::ControlModifier);
    auto* dialog = rig.find<QDialog>("printDialog");
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->isModal());
    dialog->reject();
}

}  // namespace
