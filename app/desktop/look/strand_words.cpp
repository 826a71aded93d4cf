#include "app/desktop/look/strand_words.h"

#include "app/desktop/look/theme.h"
#include "app/desktop/words.h"

#include <QCoreApplication>

namespace app::desktop {
namespace {

struct StrandsText {
    Q_DECLARE_TR_FUNCTIONS(Strands)
};

}  // namespace

StrandWords strandWords(const Theme& theme, const view::StrandPicture& picture, const WallClock& clock,
                        std::function<QString(const view::TaskId&)> jobs)
{
    StrandWords said;
    said.clock = [clock](view::Instant moment) { return clock.text(moment); };
    said.job = std::move(jobs);
    said.jobIcon = [&theme](const view::TaskId& id, const QColor& ink) {
        return theme.icon(words::taskIcon(id.kind), ink);
    };
    said.water = StrandsText::tr("Water %1");
    said.now = picture.now ? StrandsText::tr("Now %1").arg(clock.text(*picture.now)) : QString{};
    said.detail = [](const view::Strand& strand) {
        return StrandsText::tr("%1 min · %2 to %3")
            .arg(words::minutes(strand.development()), words::minutes(strand.leastAt - strand.clockStart),
                 words::minutes(strand.mostAt - strand.clockStart));
    };
    said.chance = [](const view::Strand& strand) {
        return words::chance(strand.forecast->inside, strand.forecast->runs);
    };
    return said;
}

}  // namespace app::desktop
