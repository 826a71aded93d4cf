#include "app/sound/order_reader.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include <unistd.h>

#include <array>

namespace app::sound {
namespace {

class OrderReaderTest : public testing::Test {
protected:
    OrderReaderTest()
    {
        EXPECT_EQ(::pipe(m_ends.data()), 0);
        m_reader = std::make_unique<OrderReader>(m_ends[0]);
        QObject::connect(m_reader.get(), &OrderReader::ordered, m_reader.get(),
                         [this](const Order& order) { m_orders.push_back(order); });
    }

    ~OrderReaderTest() override
    {
        m_reader.reset();
        ::close(m_ends[0]);
        hangUp();
    }

    void write(const std::string& text) const
    {
        ASSERT_EQ(::write(m_ends[1], text.data(), text.size()), static_cast<ssize_t>(text.size()));
    }

    void hangUp()
    {
        if (m_ends[1] >= 0)
            ::close(m_ends[1]);
        m_ends[1] = -1;
    }

    std::array<int, 2> m_ends{-1, -1};
    std::unique_ptr<OrderReader> m_reader;
    std::vector<Order> m_orders;
};

TEST_F(OrderReaderTest, ReadsLinesHoweverTheyArrive)
{
    QSignalSpy ended{m_reader.get(), &OrderReader::ended};
    write("silence\nready y");
    write("es\nvol");
    write("ume 0.5\n");
    hangUp();
    ASSERT_TRUE(ended.count() == 1 || ended.wait());
    EXPECT_EQ(m_orders, (std::vector<Order>{Silence{}, Ready{true}, Volume{0.5F}}));
}

TEST_F(OrderReaderTest, SaysWhatItDidNotUnderstandAndGoesOn)
{
    QSignalSpy ended{m_reader.get(), &OrderReader::ended};
    QSignalSpy misunderstood{m_reader.get(), &OrderReader::misunderstood};
    write("dance\nsilence\n");
    hangUp();
    ASSERT_TRUE(ended.count() == 1 || ended.wait());
    EXPECT_EQ(m_orders, std::vector<Order>{Silence{}});
    ASSERT_EQ(misunderstood.count(), 1);
    EXPECT_EQ(misunderstood[0][0].toString(), QStringLiteral("dance"));
}

TEST_F(OrderReaderTest, DoesNotKeepALineWithoutAnEnd)
{
    QSignalSpy ended{m_reader.get(), &OrderReader::ended};
    for (int i = 0; i < 4; ++i)
        write(std::string(10'000, 'x'));
    hangUp();
    ASSERT_TRUE(ended.count() == 1 || ended.wait());
    EXPECT_TRUE(m_orders.empty());
}

}  // namespace
}  // namespace app::sound
