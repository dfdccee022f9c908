#include "tests/app/parts/eyes.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace seamclock::test {

namespace {

using Triple = std::array<double, 3>;

double linear(int channel) {
    const double c = channel / 255.0;
    return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

int encoded(double value) {
    const double c = std::clamp(value, 0.0, 1.0);
    return static_cast<int>(
        std::lround(255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1 / 2.4) - 0.055)));
}

Triple times(const Eyes::Matrix& matrix, const Triple& in) {
    Triple out{};
    for (std::size_t row = 0; row < 3; ++row) {
        out[row] = matrix[row][0] * in[0] + matrix[row][1] * in[1] + matrix[row][2] * in[2];
    }
    return out;
}

Triple linearOf(QRgb pixel) {
    return {linear(qRed(pixel)), linear(qGreen(pixel)), linear(qBlue(pixel))};
}

QRgb seenPixel(QRgb pixel, const Eyes& eyes) {
    const Triple out = times(eyes.matrix, linearOf(pixel));
    return qRgb(encoded(out[0]), encoded(out[1]), encoded(out[2]));
}

Triple oklab(const QColor& colour) {
    constexpr Eyes::Matrix kCones{
        {{0.4122214708, 0.5363325363, 0.0514459929},
         {0.2119034982, 0.6806995451, 0.1073969566},
         {0.0883024619, 0.2817188376, 0.6299787005}}};
    constexpr Eyes::Matrix kLab{
        {{0.2104542553, 0.7936177850, -0.0040720468},
         {1.9779984951, -2.4285922050, 0.4505937099},
         {0.0259040371, 0.7827717662, -0.8086757660}}};
    Triple cones = times(kCones, linearOf(colour.rgb()));
    for (double& one : cones) {
        one = std::cbrt(one);
    }
    return times(kLab, cones);
}

} // namespace

const std::array<Eyes, 4>& weakEyes() {
    static const std::array<Eyes, 4> kAll{
        {{"protanopia",
          {{{0.152286, 1.052583, -0.204868},
            {0.114503, 0.786281, 0.099216},
            {-0.003882, -0.048116, 1.051998}}}},
         {"deuteranopia",
          {{{0.367322, 0.860646, -0.227968},
            {0.280085, 0.672501, 0.047413},
            {-0.011820, 0.042940, 0.968881}}}},
         {"tritanopia",
          {{{1.255528, -0.076749, -0.178779},
            {-0.078411, 0.930809, 0.147602},
            {0.004733, 0.691367, 0.303900}}}},
         {"grey",
          {{{0.2126, 0.7152, 0.0722}, {0.2126, 0.7152, 0.0722}, {0.2126, 0.7152, 0.0722}}}}}};
    return kAll;
}

const Eyes& plainEyes() {
    static const Eyes kPlain{"colours", {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}};
    return kPlain;
}

QImage seenBy(const QImage& image, const Eyes& eyes) {
    QImage seen(image.size(), QImage::Format_RGB32);
    std::unordered_map<QRgb, QRgb> known; // a screen has few colours
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QRgb pixel = image.pixel(x, y);
            const auto found = known.find(pixel);
            const QRgb out = found != known.end()
                                 ? found->second
                                 : known.emplace(pixel, seenPixel(pixel, eyes)).first->second;
            seen.setPixel(x, y, out);
        }
    }
    return seen;
}

QColor seenBy(const QColor& colour, const Eyes& eyes) {
    return QColor::fromRgb(seenPixel(colour.rgb(), eyes));
}

double colourDistance(const QColor& a, const QColor& b) {
    const Triple one = oklab(a);
    const Triple other = oklab(b);
    return 100 * std::hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

} // namespace seamclock::test
