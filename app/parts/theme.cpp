#include "app/parts/theme.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace seamclock {

namespace {

QColor hex(QRgb rgb) {
    return QColor::fromRgb(rgb);
}

const Theme& darkTheme() {
    static const Theme theme{
        ThemeKind::Dark,
        hex(0x0D1215),
        hex(0x171E23),
        hex(0x26313A),
        hex(0x3D4B55),
        hex(0x8596A2),
        hex(0xF4F7F9),
        hex(0xB9C6CF),
        hex(0x26313A),
        hex(0x333E46),
        hex(0x8596A2),
        hex(0xF4F7F9),
        {{hex(0x0E3523), hex(0xFFFFFF), hex(0x63D997)},
         {hex(0xFFC61A), hex(0x141000), hex(0xFFC61A)},
         {hex(0x0B4AB8), hex(0xFFFFFF), hex(0x86B6FF)},
         {hex(0xAE1019), hex(0xFFFFFF), hex(0xFF8A86)},
         {hex(0x26313A), hex(0xF4F7F9), hex(0xB9C6CF)}}};
    return theme;
}

const Theme& lightTheme() {
    static const Theme theme{
        ThemeKind::Light,
        hex(0xE6EBEE),
        hex(0xFFFFFF),
        hex(0xEEF2F4),
        hex(0xBAC5CC),
        hex(0x5C6C77),
        hex(0x0D151A),
        hex(0x43515B),
        hex(0xDCE3E8),
        hex(0xC9D2D8),
        hex(0x5C6C77),
        hex(0x26323A),
        {{hex(0xCDEEDA), hex(0x08301A), hex(0x0A6536)},
         {hex(0xFFC61A), hex(0x141000), hex(0x7A5000)},
         {hex(0x0B4AB8), hex(0xFFFFFF), hex(0x0B4AB8)},
         {hex(0xAE1019), hex(0xFFFFFF), hex(0xAE1019)},
         {hex(0xDCE3E8), hex(0x0D151A), hex(0x43515B)}}};
    return theme;
}

const Theme& contrastTheme() {
    static const Theme theme{
        ThemeKind::Contrast,
        hex(0x000000),
        hex(0x000000),
        hex(0x000000),
        hex(0xFFFFFF),
        hex(0xFFFFFF),
        hex(0xFFFFFF),
        hex(0xFFFFFF),
        hex(0x000000),
        hex(0x2A2A2A),
        hex(0xFFFFFF),
        hex(0xFFFFFF),
        {{hex(0x000000), hex(0xFFFFFF), hex(0x7CFFB2)},
         {hex(0xFFD54A), hex(0x000000), hex(0xFFD54A)},
         {hex(0x0A3F9E), hex(0xFFFFFF), hex(0x9DC4FF)},
         {hex(0x8E0008), hex(0xFFFFFF), hex(0xFF9C98)},
         {hex(0x000000), hex(0xFFFFFF), hex(0xFFFFFF)}}};
    return theme;
}

struct Stop {
    double celsius;
    double lightness;
    double chroma;
    double hue; // degrees
};

// Lightness rises all the way, so the map reads in grey; hue runs slate, violet, orchid, pale rose
// and keeps off the four signal hues.
constexpr std::array<Stop, 7> kStops{
    {{20, 0.50, 0.018, 255},
     {60, 0.545, 0.060, 285},
     {100, 0.605, 0.105, 303},
     {130, 0.675, 0.130, 315},
     {165, 0.78, 0.115, 326},
     {200, 0.905, 0.060, 335},
     {220, 0.96, 0.028, 340}}};

int encoded(double linear) {
    const double c = std::clamp(linear, 0.0, 1.0);
    const double s = c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1 / 2.4) - 0.055;
    return static_cast<int>(std::lround(s * 255));
}

// OKLab to linear sRGB: the matrices of B. Ottosson, "A perceptual color space for image
// processing", 2020.
QColor fromOklch(double lightness, double chroma, double hueDegrees) {
    const double hue = hueDegrees * 3.14159265358979323846 / 180;
    const double a = chroma * std::cos(hue);
    const double b = chroma * std::sin(hue);
    const double l = std::pow(lightness + 0.3963377774 * a + 0.2158037573 * b, 3);
    const double m = std::pow(lightness - 0.1055613458 * a - 0.0638541728 * b, 3);
    const double s = std::pow(lightness - 0.0894841775 * a - 1.2914855480 * b, 3);
    return QColor(
        encoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
        encoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
        encoded(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s));
}

// WCAG 2.1, "relative luminance", with its threshold of 0.03928.
double relativeLuminance(const QColor& colour) {
    const auto linear = [](double c) {
        return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

} // namespace

const Theme& Theme::of(ThemeKind kind) {
    switch (kind) {
    case ThemeKind::Light:
        return lightTheme();
    case ThemeKind::Contrast:
        return contrastTheme();
    case ThemeKind::Dark:
        break;
    }
    return darkTheme();
}

const ChangeoverColours& changeoverColours() {
    static const ChangeoverColours colours{hex(0x04225C), hex(0x0B4AB8), hex(0xAE1019),
                                           hex(0xFFFFFF), hex(0x04225C), hex(0x5E0007)};
    return colours;
}

QColor yellowFill() {
    return hex(0xFFC61A);
}

QColor yellowOutline() {
    return hex(0x141000);
}

QColor textOnPlate() {
    return hex(0x2A1238);
}

QColor temperatureColour(double celsius) {
    const double t = std::clamp(celsius, kStops.front().celsius, kStops.back().celsius);
    std::size_t i = 0;
    while (i + 2 < kStops.size() && t > kStops[i + 1].celsius) {
        ++i;
    }
    const Stop& low = kStops[i];
    const Stop& high = kStops[i + 1];
    const double part = (t - low.celsius) / (high.celsius - low.celsius);
    return fromOklch(
        std::lerp(low.lightness, high.lightness, part), std::lerp(low.chroma, high.chroma, part),
        std::lerp(low.hue, high.hue, part));
}

// WCAG 2.1, "contrast ratio".
double contrastRatio(const QColor& a, const QColor& b) {
    const double one = relativeLuminance(a);
    const double other = relativeLuminance(b);
    return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

} // namespace seamclock
