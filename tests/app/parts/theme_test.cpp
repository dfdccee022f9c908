// Every pair of colours that carries words or an edge. The expected ratios were worked out by the
// design's own program from the WCAG 2.1 formula, and are rounded to one decimal there: hence the
// tolerance of 0.06.
#include "app/parts/theme.h"

#include <array>
#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "app/parts/metrics.h"
#include "tests/app/parts/eyes.h"

namespace seamclock {
namespace {

constexpr double kRounded = 0.06;
constexpr double kClockNeeds = 7;
constexpr double kTextNeeds = 4.5;
constexpr double kEdgeNeeds = 3;

TEST(ContrastRatio, AgreesWithPublishedValues) {
    // WCAG 2.1: black on white is 21:1, a colour on itself 1:1
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrastRatio(QColor(12, 200, 90), QColor(12, 200, 90)), 1, 1e-9);
    // common knowledge among web designers, from memory: #767676 is the lightest grey that
    // passes 4.5 on white
    EXPECT_NEAR(contrastRatio(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
    EXPECT_LT(contrastRatio(QColor(0x77, 0x77, 0x77), Qt::white), 4.5);
    EXPECT_NEAR(contrastRatio(QColor(255, 0, 0), Qt::white), 4.0, 0.005);
}

struct FieldRow {
    ThemeKind kind;
    Tone tone;
    double onField;
    double inkOnPanel;
    double inkOnGround;
};

const std::vector<FieldRow>& fieldRows() {
    static const std::vector<FieldRow> rows{
        {ThemeKind::Dark, Tone::Normal, 13.5, 9.5, 10.7},
        {ThemeKind::Dark, Tone::Soon, 12.1, 10.7, 12.0},
        {ThemeKind::Dark, Tone::Act, 7.8, 8.1, 9.1},
        {ThemeKind::Dark, Tone::Late, 7.3, 7.4, 8.3},
        {ThemeKind::Dark, Tone::Rest, 12.3, 9.7, 10.8},
        {ThemeKind::Light, Tone::Normal, 11.6, 7.2, 6.0},
        {ThemeKind::Light, Tone::Soon, 12.1, 7.1, 5.9},
        {ThemeKind::Light, Tone::Act, 7.8, 7.8, 6.5},
        {ThemeKind::Light, Tone::Late, 7.3, 7.3, 6.1},
        {ThemeKind::Light, Tone::Rest, 14.2, 8.2, 6.8},
        {ThemeKind::Contrast, Tone::Normal, 21.0, 16.8, 16.8},
        {ThemeKind::Contrast, Tone::Soon, 14.9, 14.9, 14.9},
        {ThemeKind::Contrast, Tone::Act, 9.5, 11.8, 11.8},
        {ThemeKind::Contrast, Tone::Late, 9.8, 10.5, 10.5},
        {ThemeKind::Contrast, Tone::Rest, 21.0, 21.0, 21.0}};
    return rows;
}

TEST(Theme, FieldsCarryTheClockAndInksCarryText) {
    for (const FieldRow& row : fieldRows()) {
        const Theme& theme = Theme::of(row.kind);
        const Field field = theme.tone(row.tone);
        SCOPED_TRACE(
            testing::Message() << "theme " << static_cast<int>(row.kind) << " tone "
                               << static_cast<int>(row.tone));
        EXPECT_NEAR(contrastRatio(field.on, field.field), row.onField, kRounded);
        EXPECT_NEAR(contrastRatio(field.ink, theme.panel), row.inkOnPanel, kRounded);
        EXPECT_NEAR(contrastRatio(field.ink, theme.ground), row.inkOnGround, kRounded);
        EXPECT_GE(contrastRatio(field.on, field.field), kClockNeeds);
        EXPECT_GE(contrastRatio(field.ink, theme.panel), kTextNeeds);
        EXPECT_GE(contrastRatio(field.ink, theme.ground), kTextNeeds);
    }
}

struct BaseRow {
    ThemeKind kind;
    double textOnPanel, textOnGround, textOnButton;
    double softOnPanel, softOnGround, softOnRaised;
    double edgeOnPanel, edgeOnGround;
};

TEST(Theme, TextAndEdgesStandOutOfTheirGround) {
    const std::vector<BaseRow> rows{
        {ThemeKind::Dark, 15.7, 17.5, 12.3, 9.7, 10.8, 7.6, 5.5, 6.2},
        {ThemeKind::Light, 18.4, 15.3, 14.2, 8.2, 6.8, 7.3, 5.4, 4.5},
        {ThemeKind::Contrast, 21, 21, 21, 21, 21, 21, 21, 21}};
    for (const BaseRow& row : rows) {
        SCOPED_TRACE(testing::Message() << "theme " << static_cast<int>(row.kind));
        const Theme& t = Theme::of(row.kind);
        EXPECT_EQ(t.kind, row.kind);
        EXPECT_NEAR(contrastRatio(t.text, t.panel), row.textOnPanel, kRounded);
        EXPECT_NEAR(contrastRatio(t.text, t.ground), row.textOnGround, kRounded);
        EXPECT_NEAR(contrastRatio(t.text, t.button), row.textOnButton, kRounded);
        EXPECT_NEAR(contrastRatio(t.textSoft, t.panel), row.softOnPanel, kRounded);
        EXPECT_NEAR(contrastRatio(t.textSoft, t.ground), row.softOnGround, kRounded);
        EXPECT_NEAR(contrastRatio(t.textSoft, t.raised), row.softOnRaised, kRounded);
        EXPECT_NEAR(contrastRatio(t.edge, t.panel), row.edgeOnPanel, kRounded);
        EXPECT_NEAR(contrastRatio(t.edge, t.ground), row.edgeOnGround, kRounded);
        EXPECT_GE(contrastRatio(t.text, t.raised), kClockNeeds);
        EXPECT_GE(contrastRatio(t.textSoft, t.raised), kTextNeeds);
        EXPECT_GE(contrastRatio(t.edge, t.ground), kEdgeNeeds);
        EXPECT_GE(contrastRatio(t.edge, t.button), kEdgeNeeds);
        EXPECT_GE(contrastRatio(t.metalEdge, t.panel), kEdgeNeeds);
        EXPECT_GE(contrastRatio(t.outline, t.panel), kEdgeNeeds);
        EXPECT_GE(
            contrastRatio(t.tone(Tone::Normal).ink, t.raised), kEdgeNeeds); // the band's bracket
    }
}

TEST(Theme, TheChangeoverIsReadableOnEachOfItsFields) {
    const ChangeoverColours& c = changeoverColours();
    EXPECT_NEAR(contrastRatio(c.on, c.done), 15.1, kRounded);
    EXPECT_NEAR(contrastRatio(c.on, c.left), 7.8, kRounded);
    EXPECT_NEAR(contrastRatio(c.on, c.late), 7.3, kRounded);
    // why the front needs its white marker
    EXPECT_NEAR(contrastRatio(c.done, c.left), 1.9, kRounded);
    EXPECT_GE(contrastRatio(c.label, c.on), kClockNeeds);
    EXPECT_GE(contrastRatio(c.lateLabel, c.on), kClockNeeds);
}

// The design's own program worked these out from the same model: OKLab x 100, whole numbers, the
// dark theme's fields that mean something.
TEST(Theme, FieldsStayAsFarApartForWeakEyesAsTheDesignCounted) {
    const Theme& theme = Theme::of(ThemeKind::Dark);
    const auto smallest = [&theme](const test::Eyes& eyes) {
        constexpr Tone kTones[] = {Tone::Normal, Tone::Soon, Tone::Act, Tone::Late};
        double least = 1000;
        for (const Tone a : kTones) {
            for (const Tone b : kTones) {
                if (a < b) {
                    least = std::min(
                        least, test::colourDistance(
                                   test::seenBy(theme.tone(a).field, eyes),
                                   test::seenBy(theme.tone(b).field, eyes)));
                }
            }
        }
        return std::lround(least);
    };
    EXPECT_EQ(smallest(test::plainEyes()), 25);
    EXPECT_EQ(smallest(test::weakEyes()[0]), 7); // wait against late: hence shape, word and frame
    EXPECT_EQ(smallest(test::weakEyes()[1]), 21);
    EXPECT_EQ(smallest(test::weakEyes()[2]), 18);
    EXPECT_EQ(smallest(test::weakEyes()[3]), 2); // act against late, likewise
}

// The five inks of a panel, and those of a field, for eyes that see some colours alike: a text
// stays readable whatever is left of its colour.
TEST(Theme, WordsKeepTheirContrastForWeakEyes) {
    for (const ThemeKind kind : {ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast}) {
        const Theme& theme = Theme::of(kind);
        for (const test::Eyes& eyes : test::weakEyes()) {
            const auto ratio = [&eyes](const QColor& a, const QColor& b) {
                return contrastRatio(test::seenBy(a, eyes), test::seenBy(b, eyes));
            };
            for (const Tone tone : {Tone::Normal, Tone::Soon, Tone::Act, Tone::Late, Tone::Rest}) {
                const Field field = theme.tone(tone);
                SCOPED_TRACE(
                    testing::Message() << eyes.name << ", theme " << static_cast<int>(kind)
                                       << ", tone " << static_cast<int>(tone));
                EXPECT_GE(ratio(field.on, field.field), kTextNeeds);
                EXPECT_GE(ratio(field.ink, theme.panel), kTextNeeds);
                EXPECT_GE(ratio(field.ink, theme.ground), kTextNeeds);
            }
        }
    }
}

TEST(Theme, TheYellowMarkHasItsEdgeOnAnyPanel) {
    EXPECT_NEAR(contrastRatio(yellowFill(), yellowOutline()), 12.1, kRounded);
    EXPECT_NEAR(contrastRatio(yellowOutline(), Qt::white), 19.0, kRounded);
    for (ThemeKind kind : {ThemeKind::Dark, ThemeKind::Contrast}) {
        EXPECT_GE(contrastRatio(yellowFill(), Theme::of(kind).panel), kEdgeNeeds);
    }
    EXPECT_NEAR(contrastRatio(textOnPlate(), temperatureColour(213)), 14.0, 0.5);
    for (double celsius : {180.0, 200.0, 220.0}) {
        EXPECT_GE(contrastRatio(textOnPlate(), temperatureColour(celsius)), kTextNeeds) << celsius;
    }
}

// The design's table, made by its own program from the same stops; one step of a channel for
// rounding.
TEST(TemperatureColour, AgreesWithTheDesignsTable) {
    const std::vector<std::pair<int, QRgb>> table{
        {20, 0x5C646E},  {30, 0x5E6777},  {40, 0x616981},  {50, 0x656A8A},  {60, 0x6C6B92},
        {70, 0x736E9C},  {80, 0x7B6FA5},  {90, 0x8471AE},  {100, 0x8E71B5}, {110, 0x9B75BE},
        {120, 0xA779C6}, {130, 0xB57DCD}, {140, 0xC186D2}, {150, 0xCC8FD7}, {160, 0xD898DC},
        {170, 0xE2A5E1}, {180, 0xEBB3E5}, {190, 0xF3C2EA}, {200, 0xFAD1F0}, {210, 0xFDDEF3},
        {220, 0xFFEBF8}};
    for (const auto& row : table) {
        const QColor own = temperatureColour(row.first);
        const QColor expected = QColor::fromRgb(row.second);
        EXPECT_NEAR(own.red(), expected.red(), 1) << row.first;
        EXPECT_NEAR(own.green(), expected.green(), 1) << row.first;
        EXPECT_NEAR(own.blue(), expected.blue(), 1) << row.first;
    }
}

TEST(TemperatureColour, GrowsLighterAllTheWay) {
    for (int celsius = 20; celsius < 220; celsius += 5) {
        EXPECT_GT(
            contrastRatio(temperatureColour(celsius + 5), Qt::black),
            contrastRatio(temperatureColour(celsius), Qt::black))
            << celsius;
    }
    EXPECT_EQ(temperatureColour(-40), temperatureColour(20));
    EXPECT_EQ(temperatureColour(400), temperatureColour(220));
}

// 15 mm: what the design asks of a target for gloved hands.
TEST(Metrics, ATargetIsFifteenMillimetresOnEachScreen) {
    for (double inch : {8.0, 10.0, 12.0}) {
        for (const std::array<double, 2>& pixels :
             {std::array<double, 2>{1280, 800}, std::array<double, 2>{1920, 1200}}) {
            const double dpi = std::hypot(pixels[0], pixels[1]) / inch;
            const double mm = Metrics::forDpi(dpi).px(kTargetUnits) / dpi * 25.4;
            EXPECT_GE(mm, 15) << inch;
            EXPECT_LE(mm, 15.3) << inch;
        }
    }
}

TEST(Metrics, OneUnitIsOnePixelOfTheReferenceScreen) {
    // a 10.0 inch screen of 1280 x 800
    EXPECT_NEAR(Metrics::forDpi(std::hypot(1280, 800) / 10.0).px(1), 1, 0.001);
    Metrics enlarged;
    enlarged.text = 2;
    EXPECT_EQ(enlarged.textPx(22), 44);
    EXPECT_EQ(enlarged.px(22), 22);
}

} // namespace
} // namespace seamclock
