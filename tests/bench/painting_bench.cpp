#include "app/desktop/lanes/lanes_page.h"
#include "tests/app/desktop/rig.h"

#include <QApplication>
#include <QGridLayout>
#include <QImage>
#include <QLabel>
#include <QProgressBar>

#include <benchmark/benchmark.h>
#include <gtest/gtest.h>

#include <cstdlib>
#include <string>
#include <vector>

// What a frame of running lanes costs: the whole page painted anew, and one second of the clock, from the
// session's tick to the last changed pixel. Beside it, in the same run, a page that says as much in the
// toolkit's own parts: for each lane a name, a time, a bar and a state. Both are painted by Qt's raster
// engine in a window of 1280 by 800, with no screen (QT_QPA_PLATFORM=offscreen). Processor time of the one
// thread.

namespace {

using core::measure::Seconds;
using core::run::Answer;
using core::stagger::TaskId;
using core::stagger::TaskKind;
using namespace std::chrono_literals;

constexpr QSize window{1280, 800};

core::service::Service manyZones(std::size_t lanes)
{
    core::service::Coat coat;
    coat.name = "Coat";
    coat.bowls.resize(1);
    coat.bowls[0].name = "Colour";
    coat.groups.resize(1);
    coat.groups[0].name = "All together";
    coat.groups[0].rinse = 4min;
    for (std::size_t zone = 0; zone < lanes; ++zone) {
        core::service::Zone made;
        made.name = "Zone " + std::to_string(zone + 1);
        made.apply = {1min, 1min, 1min};
        made.develop = {40min, 90min, 300min};
        if (zone > 0)
            made.after.push_back({.zone = zone - 1, .longestGap = {}});
        coat.zones.push_back(made);
    }
    core::service::Service service;
    service.name = "Many lanes";
    service.crew.hands = {{"Stylist", {}, {}}};
    service.coats = {coat};
    return service;
}

/// Lanes that all develop, the first since some minutes.
class Lanes {
public:
    explicit Lanes(std::size_t count)
    {
        m_rig.window->resize(window);
        m_rig.window->document().replace(manyZones(count), {});
        m_rig.startLanes();
        for (std::size_t zone = 0; zone < count; ++zone)
            for (const auto kind : {Answer::Kind::Start, Answer::Kind::Finish}) {
                Answer answer;
                answer.kind = kind;
                answer.task = TaskId{.kind = TaskKind::Apply, .item = zone};
                const auto left = static_cast<std::int64_t>(count - zone);
                answer.ago = Seconds{20 * left + (kind == Answer::Kind::Start ? 20 : 0)};
                if (const auto refused = m_rig.session->answer(answer))
                    std::abort();
            }
        m_rig.goOn(1s);
        settle();
    }

    /// A second of the clock, and everything that comes of it, painted.
    void second()
    {
        m_rig.clock->goOn(1s);
        while (m_rig.session->state().now < m_rig.clock->now())
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        settle();
    }

    [[nodiscard]] std::size_t shown() const { return m_rig.session->state().lanes.size(); }
    [[nodiscard]] QWidget& page() const { return *m_rig.find<app::desktop::LanesPage>("lanesPage"); }

private:
    static void settle()
    {
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }

    rig::Rig m_rig;
};

/// The same said by labels and bars, with digits as large.
class PlainParts {
public:
    explicit PlainParts(int count)
    {
        auto* grid = new QGridLayout{&m_page};
        for (int lane = 0; lane < count; ++lane) {
            auto* name = new QLabel{QStringLiteral("Zone %1").arg(lane + 1)};
            auto* digits = new QLabel;
            QFont large = digits->font();
            large.setPixelSize(window.height() / (2 * count));
            digits->setFont(large);
            auto* bar = new QProgressBar;
            bar->setRange(0, 300 * 60);
            bar->setTextVisible(false);
            auto* state = new QLabel{QStringLiteral("develops, rinse at 14:52")};
            int column = 0;
            for (QWidget* part : std::initializer_list<QWidget*>{name, digits, bar, state})
                grid->addWidget(part, lane, column++);
            m_digits.push_back(digits);
            m_bars.push_back(bar);
        }
        m_page.resize(window);
        m_page.show();
        second();
    }

    void second()
    {
        ++m_now;
        for (std::size_t lane = 0; lane < m_digits.size(); ++lane) {
            const int left = 90 * 60 - m_now + 20 * static_cast<int>(lane);
            m_digits[lane]->setText(
                QStringLiteral("%1:%2").arg(left / 60).arg(left % 60, 2, 10, QLatin1Char{'0'}));
            m_bars[lane]->setValue(m_now);
        }
        QCoreApplication::sendPostedEvents();
        QCoreApplication::processEvents();
    }

    QWidget& page() { return m_page; }

private:
    QWidget m_page;
    std::vector<QLabel*> m_digits;
    std::vector<QProgressBar*> m_bars;
    int m_now = 0;
};

void paintWhole(benchmark::State& state, QWidget& page)
{
    QImage image{page.size(), QImage::Format_ARGB32_Premultiplied};
    for (auto _ : state) {
        page.render(&image, {}, {}, QWidget::DrawWindowBackground | QWidget::DrawChildren);
        benchmark::DoNotOptimize(image.constBits());
    }
}

void lanesWhole(benchmark::State& state)
{
    const Lanes lanes{static_cast<std::size_t>(state.range(0))};
    if (lanes.shown() != static_cast<std::size_t>(state.range(0)))
        return state.SkipWithError("not all lanes develop");
    paintWhole(state, lanes.page());
}

void plainWhole(benchmark::State& state)
{
    PlainParts plain{static_cast<int>(state.range(0))};
    paintWhole(state, plain.page());
}

void lanesSecond(benchmark::State& state)
{
    Lanes lanes{static_cast<std::size_t>(state.range(0))};
    for (auto _ : state)
        lanes.second();
}

void plainSecond(benchmark::State& state)
{
    PlainParts plain{static_cast<int>(state.range(0))};
    for (auto _ : state)
        plain.second();
}

void sizes(benchmark::internal::Benchmark* bench)
{
    bench->Arg(4)->Arg(8)->Arg(16)->Unit(benchmark::kMillisecond);
}

BENCHMARK(lanesWhole)->Apply(sizes);
BENCHMARK(plainWhole)->Apply(sizes);
// Few enough seconds that no lane comes to an end.
BENCHMARK(lanesSecond)->Apply(sizes)->Iterations(300);
BENCHMARK(plainSecond)->Apply(sizes)->Iterations(300);

}  // namespace

int main(int argc, char** argv)
{
    const QApplication application{argc, argv};
    testing::InitGoogleTest(&argc, argv);  // The rig expects.
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return testing::UnitTest::GetInstance()->Failed() ? 1 : 0;
}
