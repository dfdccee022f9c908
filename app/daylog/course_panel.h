// Paints the course of a weld: a column a phase, in each the plan above what was done, the scale's
// readings against their band, and the weld plane's estimate with its spread.
#pragma once

#include "app/daylog/course_view.h"

#include <QRectF>

class QPainter;

namespace seamclock {

struct Metrics;
struct Theme;

/// What must be there for the drawing to be read [units].
inline constexpr double kLeastCourse = 176;

/// In that box [px].
void paintCourse(
    QPainter& painter, const QRectF& box, const CourseView& view, const Theme& theme,
    const Metrics& metrics);

/// The same in words, for a screen reader.
QString spokenCourse(const CourseView& view);

} // namespace seamclock
