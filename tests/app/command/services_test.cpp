#include "app/command/services.h"

#include "app/session/time_zones.h"

#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>

namespace app::command {
namespace {

using core::service::Crew;
using core::service::Work;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

const char* const nobody = "";
const char* const two = R"("crew": {"hands": [{"name": "Wig room"}, {"name": "Dresser"}], "basins": 2}, )";
const char* const three =
    R"("crew": {"hands": [{"name": "Wig room"}, {"name": "Dresser"}, {"name": "Mate"}], "basins": 2}, )";

/// Service files with these crews, called a.json, b.json, ...
class Files {
public:
    explicit Files(const std::vector<std::string>& crews)
    {
        for (const std::string& crew : crews) {
            m_names << m_folder.filePath(QString{QChar{u'a' + static_cast<ushort>(m_names.size())}}
                                         + QStringLiteral(".json"));
            QFile file{m_names.last()};
            EXPECT_TRUE(file.open(QIODevice::WriteOnly));
            file.write(QByteArray::fromStdString(R"({"basinbell": 1, "name": "A wig", )" + crew
                                                 + R"("coats": [{"zones": [{"name": "Root", "apply": 12,
                    "develop": {"least": 25, "target": 30, "most": 35}}], "rinse": [{"length": 5}]}]})"));
        }
    }

    [[nodiscard]] const QStringList& names() const { return m_names; }
    [[nodiscard]] std::string name(qsizetype place) const { return m_names[place].toStdString(); }

    auto read(const QString& crewFile = {}) const
    {
        std::istringstream in;
        return readServices(m_names, crewFile, in, m_zones);
    }

private:
    QTemporaryDir m_folder;
    QStringList m_names;
    session::QtTimeZones m_zones;
};

TEST(Services, HaveTheCrewThatOneOfThemNames)
{
    for (const Files& files :
         {Files{{two, nobody, nobody}}, Files{{nobody, two, nobody}}, Files{{two, two, two}}}) {
        const auto services = files.read();
        ASSERT_TRUE(services) << services.error().front();
        ASSERT_EQ(services->size(), 3U);
        for (const auto& service : *services) {
            EXPECT_EQ(service.crew.hands.size(), 2U);
            EXPECT_EQ(service.crew.basins, 2U);
        }
    }
    EXPECT_EQ(Files({nobody, nobody}).read()->front().crew.hands.size(), 1U);
}

TEST(Services, WhoseCrewsContradictEachOtherAreRefusedWithBothPlaces)
{
    const Files files{{two, nobody, three}};
    const auto services = files.read();
    ASSERT_FALSE(services);
    EXPECT_THAT(services.error(), ElementsAre(StartsWith(files.name(2) + ": crew: ")));
    EXPECT_THAT(services.error().front(), HasSubstr(files.name(0) + ": 3 pairs of hands here, 2 there."));
    EXPECT_THAT(services.error().front(), HasSubstr("--crew " + files.name(0)));
}

TEST(Services, HaveTheCrewThatIsChosen)
{
    const Files files{{two, three}};
    EXPECT_EQ(files.read(files.names()[1])->front().crew.hands.size(), 3U);
    EXPECT_EQ(files.read(files.names()[0])->back().crew.hands.size(), 2U);
    const auto missing = files.read(QStringLiteral("nowhere.json"));
    ASSERT_FALSE(missing);
    EXPECT_THAT(missing.error(), ElementsAre(StartsWith("nowhere.json: ")));
}

}  // namespace
}  // namespace app::command
