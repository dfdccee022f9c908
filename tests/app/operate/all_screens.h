// The operator's window led through every screen that pictures are painted of, for tests that look
// at each: a good weld, a late one, what stands beside them, two benches, a series, people,
// set-up, the alarms.
#pragma once

#include "app/operate/day_walk.h"
#include "app/operate/guide_walk.h"
#include "app/operate/people_walk.h"
#include "app/operate/setup_walk.h"
#include "app/operate/shop_walk.h"
#include "tests/app/operate/demo_shop.h"

#include <gtest/gtest.h>
#include <optional>
#include <set>

namespace seamclock {

class StageSound : public SoundLink {
public:
    void show(const Shift&) override {}
    bool soundOk() const override { return ok; }
    bool ok = true;
};

class StagePower : public PowerLink {
public:
    void hold(bool) override {}
    Awake awake() const override { return Awake::Whole; }
    bool batteryLow() const override { return low; }
    int batteryPercent() const override { return 14; }
    bool low = false;
};

class Stage {
public:
    explicit Stage(QSize size = QSize(1280, 800), const Preferences& preferences = {})
        : m_shop(
              size, preferences, std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
              [this](WindowParts& parts) {
                  parts.sound = &m_sound;
                  parts.power = &m_power;
                  parts.readGuide = [] {
                      return readGuide(QString(SEAMCLOCK_SOURCE_DIR) + "/docs/guide", {});
                  };
              }) {}

    Window& window() { return m_shop.window(); }
    const std::set<QString>& seen() const { return m_seen; }

    /// `look(window, name)` at each.
    template <class Look>
    void walk(const Look& look) {
        walkWelds(look);
        if (testing::Test::HasFatalFailure()) {
            return;
        }
        const auto picture = pictureBy(look);
        SetupWalk setup(
            m_shop.window(), m_shop.desk(), *m_people,
            QString(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
            QString::fromStdString(m_shop.documents()));
        auto done = setup.all(PeopleWalk::kForemansPin, picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = setup.whatIf(picture);
        ASSERT_TRUE(done) << done.error().detail;
        ShopWalk shop(
            m_shop.window(), m_shop.writer(), *m_people,
            QString::fromStdString(m_shop.documents()));
        done = shop.all(picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walkGuide(m_shop.window(), picture);
        ASSERT_TRUE(done) << done.error().detail;
        EXPECT_GE(m_seen.size(), 174U);
    }

    /// The operator's and the people's alone.
    template <class Look>
    void walkWelds(const Look& look) {
        const auto picture = pictureBy(look);
        Walk walk(m_shop.window(), m_shop.floor(), m_shop.clock());
        auto done = walk.goodWeld(picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.lateWeld(1, picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.others(picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.twoBenches(picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.series(picture);
        ASSERT_TRUE(done) << done.error().detail;
        m_people.emplace(m_shop.window(), m_shop.desk(), m_shop.clock());
        done = m_people->all(picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = DayWalk(m_shop.window(), m_shop.writer(), *m_people, m_shop.clock()).all(picture);
        ASSERT_TRUE(done) << done.error().detail;
    }

private:
    template <class Look>
    auto pictureBy(const Look& look) {
        return [this, &look](const QString& name) {
            ASSERT_TRUE(m_shop.writer().flush());
            m_sound.ok = name != QLatin1String("no-sound");
            m_power.low = name == QLatin1String("battery-low");
            m_shop.window().refresh();
            m_seen.insert(name);
            look(m_shop.window(), name.toStdString());
            m_sound.ok = true;
            m_power.low = false;
        };
    }

    StageSound m_sound;
    StagePower m_power;
    Shop m_shop;
    std::optional<PeopleWalk> m_people;
    std::set<QString> m_seen;
};

} // namespace seamclock
