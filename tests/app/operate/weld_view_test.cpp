#include "app/operate/weld_view.h"

#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

WeldView stopped(test::Story& story) {
    story.then(WeldAborted{"plate_cold", "Plate cold or dirty"});
    ViewContext context;
    context.now = story.now();
    return weldView(story.weld(), context);
}

TEST(WeldView, WhatIsStoppedBeforeTheFacesMetIsNotShownAsAJoint) {
    for (const auto stretch : {&test::Story::prepare, &test::Story::align, &test::Story::soak}) {
        test::Story story;
        (story.*stretch)();
        const WeldView view = stopped(story);
        EXPECT_EQ(view.seam.phase, SeamView::Phase::Prepare);
        EXPECT_EQ(view.lamp.under, QStringLiteral("not joined"));
        EXPECT_TRUE(view.sentence.endsWith("Cut back and plane again."))
            << qPrintable(view.sentence);
    }
    for (const auto stretch :
         {&test::Story::changeOver, &test::Story::buildUp, &test::Story::cool}) {
        test::Story story;
        (story.*stretch)();
        const WeldView view = stopped(story);
        EXPECT_EQ(view.seam.phase, SeamView::Phase::Look);
        EXPECT_EQ(view.lamp.under, QStringLiteral("cut out"));
        EXPECT_TRUE(view.sentence.endsWith("Cut it out and plane again."))
            << qPrintable(view.sentence);
    }
}

} // namespace
} // namespace seamclock
