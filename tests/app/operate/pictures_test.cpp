// Every screen of the walk, looked at by machine: no word cut off, outside its part or over another
// at 100, 125, 150 and 200 % of text, lying and upright, and none smaller for a person who asked
// for larger ones. And the pictures' command says in one sentence when it can't write.
#include "tests/app/operate/all_screens.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/app/parts/text_recorder.h"
#include "tests/app/print/longer_words.h"
#include "tests/support/sanitized.h"

#include <QDir>
#include <QFile>
#include <gtest/gtest.h>
#include <map>
#include <vector>

namespace seamclock {
namespace {

struct Look {
    test::Tablet tablet;
    double text = 1;
    bool mirrored = false;
};

/// Of one tablet the smallest size comes first: the others are held against it.
std::vector<Look> looks() {
    std::vector<Look> all;
    for (const bool upright : {false, true}) {
        for (const double text : kTextSizes) {
            all.push_back({{QSize(1280, 800), 1, 10, upright}, text, false});
        }
    }
    all.push_back({{QSize(1920, 1200), 1.5, 12, false}, 1, true});
    if (test::kSanitized) {
        all = {all[0], all[std::size(kTextSizes)]}; // the same lines are run in each
    }
    return all;
}

/// The smallest letters of each part [units].
std::map<std::string, double> smallest(Window& window, double perUnit) {
    std::map<std::string, double> all;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        auto* part = dynamic_cast<Part*>(widget);
        if (part == nullptr || !part->isVisible()) {
            continue;
        }
        TextRecorder recorder(part->size());
        part->render(&recorder, QPoint(), QRegion(), QWidget::RenderFlags());
        for (const WrittenText& text : recorder.texts()) {
            const auto known = all.emplace(part->objectName().toStdString(), 1e9).first;
            known->second = std::min(known->second, text.pixelSize / perUnit);
        }
    }
    return all;
}

TEST(EveryScreen, CutsNoWordAtAnySizeOfText) {
    Stage stage;
    int parts = 0;
    stage.walk([&parts](Window& window, const std::string& name) {
        const Preferences before = window.preferences();
        const QSize size = window.size();
        std::map<std::string, double> plain;
        for (const Look& look : looks()) {
            Preferences next = before;
            next.dpi = look.tablet.dpi();
            next.text = look.text;
            next.mirrored = look.mirrored;
            window.resize(look.tablet.window());
            window.setPreferences(next);
            const std::string what = name + " " + look.tablet.name() + " text " +
                                     std::to_string(qRound(look.text * 100));
            for (const std::string& trouble : test::wordTroubles(window, parts)) {
                ADD_FAILURE() << what << ": " << trouble;
            }
            if (look.text != 1 && look.text != kTextSizes[std::size(kTextSizes) - 1]) {
                continue;
            }
            const double perUnit = look.tablet.dpi() / kUnitsPerInch;
            const auto now = smallest(window, perUnit);
            if (look.text == 1) {
                plain = now;
            }
            for (const auto& [part, units] : now) {
                const auto was = plain.find(part);
                if (was != plain.end()) { // a unit: sizes are whole pixels
                    EXPECT_GE(units, was->second - 1) << what << ": " << part << " became smaller";
                }
                EXPECT_GE(units, 13 - 1 / perUnit) << what << ": " << part;
            }
        }
        window.resize(size);
        window.setPreferences(before);
    });
    EXPECT_GT(parts, test::kSanitized ? 4'000 : 10'000);
}

TEST(EveryScreen, OfAWeldCutsNoWordWhereEachIsAThirdLonger) {
    const test::LongerWords longer;
    Stage stage;
    int parts = 0;
    stage.walkWelds([&parts](Window& window, const std::string& name) {
        const Preferences before = window.preferences();
        const QSize size = window.size();
        for (const bool upright : {false, true}) {
            const test::Tablet tablet{QSize(1280, 800), 1, 10, upright};
            for (const double text : {1.0, 1.5, 2.0}) {
                Preferences next = before;
                next.text = text;
                window.resize(tablet.window());
                window.setPreferences(next);
                for (const std::string& trouble : test::wordTroubles(window, parts)) {
                    ADD_FAILURE() << name << " " << tablet.name() << " text " << qRound(text * 100)
                                  << ": " << trouble;
                }
            }
        }
        window.resize(size);
        window.setPreferences(before);
    });
    EXPECT_GT(parts, 2'000);
}

TEST(Pictures, IntoAFolderThatCannotBeMadeSaysSoInOneSentence) {
    test::ScratchFolder folder;
    // A file stands where the folder should: that holds for any user, also for root.
    const QString file = QString::fromStdString(folder.file("taken"));
    QFile taken(file);
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    taken.close();
    PictureOptions options;
    options.folder = file + "/pictures";
    options.demo = QString(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";
    const auto written = paintPictures(options, {});
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
    const std::string& detail = written.error().detail;
    EXPECT_NE(detail.find(options.folder.toStdString()), std::string::npos) << detail;
    EXPECT_NE(detail.find("allowed: a folder that can be written"), std::string::npos) << detail;
    EXPECT_EQ(detail.find('\n'), std::string::npos) << detail;
}

} // namespace
} // namespace seamclock
