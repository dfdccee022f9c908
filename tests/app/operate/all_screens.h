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
        : m_size(size), m_preferences(preferences),
          m_shop(
              size, preferences, std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
              [this](WindowParts& parts) {
                  parts.sound = &m_sound;
                  parts.power = &m_power;
                  layPhoto(QString::fromStdString(m_photos.path()));
                  parts.photos = QStringList{QString::fromStdString(m_photos.path())};
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
        walkPowerCuts(look);
        EXPECT_GE(m_seen.size(), 187U);
    }

    /// What stands when the power came back, of a weld in soak and of one that cools: each in a
    /// shop of its own.
    template <class Look>
    void walkPowerCuts(const Look& look) {
        for (const bool cooling : {false, true}) {
            Stage cut(m_size, m_preferences);
            cut.cutPower(cooling);
            if (testing::Test::HasFatalFailure()) {
                return;
            }
            const QString name = cooling ? "power-was-off-in-cooling" : "power-was-off-before-lock";
            cut.pictureBy(look)(name);
            m_seen.insert(name);
        }
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
    void cutPower(bool cooling) {
        Walk walk(m_shop.window(), m_shop.floor(), m_shop.clock());
        const auto done = cooling ? walk.toCooling() : walk.toSoak();
        ASSERT_TRUE(done) << done.error().detail;
        m_shop.cutPower();
    }

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

    QSize m_size;
    Preferences m_preferences;
    test::ScratchFolder m_photos;
    StageSound m_sound;
    StagePower m_power;
    Shop m_shop;
    std::optional<PeopleWalk> m_people;
    std::set<QString> m_seen;
};

} // namespace seamclock
