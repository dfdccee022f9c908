#include "app/operate/shop_walk.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <algorithm>

namespace seamclock {
namespace {

constexpr const char* kJob = "QV-131";
/// Invented, as is everything in the demo: with a decimal comma and a bench that isn't there.
constexpr const char* kWrongTable =
    "label,what,material,procedure,bench,thickness_mm,length_mm,sheet_1_batch,sheet_2_batch\n"
    "L1,lid to rim,PE-HD,pe-hd-dvs2207-1-2005,west,\"8,5\",1180,VP-40902,VP-40902\n"
    "L2,rim,PE-HD,pe-hd-dvs2207-1-2005,north,8,1180,VP-40902,VP-40903\n";
constexpr const char* kTable =
    "label,what,material,procedure,bench,thickness_mm,length_mm,sheet_1_batch,sheet_2_batch\n"
    "L1,lid to rim,PE-HD,pe-hd-dvs2207-1-2005,west,8,1180,VP-40902,VP-40902\n"
    "L2,rim,PE-HD,pe-hd-dvs2207-1-2005,,8,1180,VP-40902,VP-40903\n";

Result<void> stopped(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through the shop stopped: " + why);
}

} // namespace

ShopWalk::ShopWalk(Window& window, LogWriterBase& writer, PeopleWalk& people, QString scratch)
    : m_window(window), m_writer(writer), m_people(people), m_scratch(std::move(scratch)) {}

void ShopWalk::settle() {
    static_cast<void>(m_writer.flush());
    do {
        m_people.settle();
        while (flow().isBusy()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
        m_window.refresh();
    } while (flow().isBusy());
}

void ShopWalk::take(const Picture& picture, const QString& name) {
    settle();
    if (picture) {
        picture(name);
        settle(); // it may have looked at other times and sizes
    }
}

Result<void> ShopWalk::expect(const Page* page, const std::string& what) const {
    return m_window.currentPage() == page ? Result<void>() : stopped(what);
}

Result<void> ShopWalk::press(SlotPlace place) {
    emit m_window.currentPage()->slotPressed(place);
    settle();
    return {};
}

Result<void> ShopWalk::choose(const QString& words) {
    const QString shown = asShown(words.toUtf8());
    const auto begins = [&](const QString& text) {
        return text.startsWith(words) || text.startsWith(shown);
    };
    int place = -1;
    if (m_window.currentPage() == flow().choicePage()) {
        const auto& choices = flow().choicePage()->view().choices;
        const auto found = std::find_if(choices.begin(), choices.end(), [&](const auto& choice) {
            return begins(choice.text) && choice.enabled;
        });
        place = found == choices.end() ? -1 : static_cast<int>(found - choices.begin());
        if (place >= 0) {
            emit flow().choicePage()->chosen(place);
        }
    } else if (m_window.currentPage() == flow().listPage()) {
        const auto& rows = flow().listPage()->view().rows;
        const auto found = std::find_if(rows.begin(), rows.end(), [&](const auto& row) {
            return begins(row.text) && row.enabled;
        });
        place = found == rows.end() ? -1 : static_cast<int>(found - rows.begin());
        if (place >= 0) {
            emit flow().listPage()->chosen(place);
        }
    }
    settle();
    return place >= 0 ? Result<void>()
                      : stopped("nothing begins with \"" + words.toStdString() + "\"");
}

Result<void> ShopWalk::number(const char* digits) {
    if (const auto there = expect(flow().valuePage(), "no number is asked for"); !there) {
        return there;
    }
    for (const QChar digit : QString::fromLatin1(digits)) {
        flow().valuePage()->pad()->type(
            digit == QLatin1Char('.') ? flow().valuePage()->pad()->decimalSign() : digit);
    }
    return press(SlotPlace::Step);
}

Result<void> ShopWalk::written(const QString& name, const QByteArray& bytes) const {
    QDir().mkpath(m_scratch);
    QFile file(QDir(m_scratch).filePath(name));
    const bool whole = file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
    return whole ? Result<void>()
                 : Result<void>(fail(
                       ErrorCode::NotWritten,
                       "\"" + file.fileName().toStdString() + "\" can't be written"));
}

Result<void> ShopWalk::open() {
    m_window.openMenu();
    return inOrder(
        {[&] { return m_people.choose("Jobs and shop"); },
         [&] {
             settle();
             return m_window.page() == PageKind::Shop ? Result<void>()
                                                      : stopped("a bench came first");
         }});
}

Result<void> ShopWalk::jobs(const Picture& picture) {
    return inOrder(
        {[&] { return open(); }, [&] { return choose("Jobs and seams"); },
         [&] {
             take(picture, "shop-jobs");
             emit flow().listPage()->chosen(0);
             settle();
             take(picture, "shop-seams");
             return expect(flow().listPage(), "the job's seams are not shown");
         },
         [&] { return press(SlotPlace::Step); }});
}

Result<void> ShopWalk::table(const Picture& picture) {
    if (const auto made = inOrder(
            {[&] { return written("wrong.csv", kWrongTable); },
             [&] { return written("lid.csv", kTable); }});
        !made) {
        return made;
    }
    const auto file = [this](const char* name) {
        flow().listPage()->setLine(QDir(m_scratch).filePath(name));
        return press(SlotPlace::Step);
    };
    return inOrder(
        {[&] { return open(); }, [&] { return choose("Jobs and seams"); },
         [&] { return press(SlotPlace::Back); },
         [&] {
             take(picture, "shop-which-job");
             flow().namePage()->setName(kJob);
             return press(SlotPlace::Step);
         },
         [&] { return file("wrong.csv"); },
         [&] {
             take(picture, "shop-table-refused");
             return flow().listPage()->view().rows.size() == 2 ? Result<void>()
                                                               : stopped("a table with two faults");
         },
         [&] { return press(SlotPlace::Stop); }, [&] { return press(SlotPlace::Back); },
         [&] {
             flow().namePage()->setName(kJob);
             return press(SlotPlace::Step);
         },
         [&] { return file("lid.csv"); },
         [&] {
             take(picture, "shop-table");
             return press(SlotPlace::Step);
         },
         [&] { return m_people.givePin(PeopleWalk::kForemansPin); },
         [&] {
             take(picture, "shop-jobs-kept");
             return choose(asShown("Job %1").arg(kJob));
         },
         [&] { return choose(QStringLiteral("L2")); },
         [&] {
             take(picture, "shop-seam-without-joint");
             return press(SlotPlace::Stop);
         }});
}

Result<void> ShopWalk::seamByHand(const Picture& picture) {
    const auto type = [this](const char* column, const QString& text) -> Result<void> {
        FormCell* cell = flow().formPage()->cellOf(column);
        if (cell == nullptr || !cell->isTyped()) {
            return stopped("the form has no field " + std::string(column));
        }
        cell->type(text);
        m_window.refresh();
        return {};
    };
    const auto chosen = [this](const char* column, int index) -> Result<void> {
        FormCell* cell = flow().formPage()->cellOf(column);
        if (cell == nullptr) {
            return stopped("the form has no field " + std::string(column));
        }
        emit cell->asked();
        settle();
        emit flow().choicePage()->chosen(index);
        settle();
        return expect(flow().formPage(), "the form did not come back");
    };
    return inOrder(
        {[&] { return open(); }, [&] { return choose("Jobs and seams"); },
         [&] { return press(SlotPlace::Stop); }, [&] { return type("job", kJob); },
         [&] { return type("part", "Salt tank, 0.9 m across"); },
         [&] { return type("label", "L3"); }, [&] { return type("what", "lid, two halves"); },
         [&] { return chosen("procedure", 0); }, [&] { return type("thickness_mm", "1800"); },
         [&] {
             take(picture, "shop-seam-form");
             return flow().formPage()->said().contains("1800") ? Result<void>()
                                                               : stopped("1800 mm was taken");
         },
         [&] { return type("thickness_mm", "8"); }, [&] { return type("length_mm", "1180"); },
         [&] { return type("sheet_1_batch", "VP-40902"); },
         [&] { return type("sheet_2_batch", "VP-40902"); }, [&] { return press(SlotPlace::Step); },
         [&] {
             take(picture, "shop-seam-to-keep");
             return press(SlotPlace::Step);
         },
         [&] { return m_people.givePin(PeopleWalk::kForemansPin); },
         [&] {
             settle();
             return expect(flow().listPage(), "the seam was not kept");
         }});
}

Result<void> ShopWalk::plan(const Picture& picture) {
    return inOrder(
        {[&] { return open(); }, [&] { return choose("The day's plan"); },
         [&] {
             take(picture, "shop-plan");
             return flow().planPage()->view().steps.empty() ? stopped("nothing is planned")
                                                            : Result<void>();
         },
         [&] { return press(SlotPlace::Back); },
         [&] {
             take(picture, "shop-plan-benches");
             return press(SlotPlace::Step);
         },
         [&] { return press(SlotPlace::Stop); },
         [&] {
             take(picture, "shop-plan-people");
             return press(SlotPlace::Step);
         },
         [&] { return press(SlotPlace::Step); }});
}

Result<void> ShopWalk::pulled(const char* joint, const Picture& picture) {
    return inOrder(
        {[&] { return open(); },
         [&] { return choose("Strength tests"); },
         [&] { return press(SlotPlace::Step); },
         [&] {
             take(picture, "shop-coupon-what");
             return choose("Pulled, of a joint");
         },
         [&] { return number(joint); },
         [&] {
             take(picture, "shop-coupon-how");
             return choose("Strengths");
         },
         [&] { return number("22.4"); },
         [&] { return number("22.9"); },
         [&] { return number("2215"); },
         [&] {
             take(picture, "shop-coupon-outside");
             return flow().valuePage()->refusal().isEmpty() ? stopped("2215 N/mm² was taken")
                                                            : Result<void>();
         },
         [&] {
             for (int i = 0; i < 5; ++i) {
                 flow().valuePage()->pad()->erase();
             }
             return number("22.1");
         },
         [&] {
             take(picture, "shop-coupon-number");
             return press(SlotPlace::Stop); // no more welded
         },
         [&] { return number("23.1"); },
         [&] { return number("23.4"); },
         [&] { return number("22.8"); },
         [&] { return press(SlotPlace::Stop); },
         [&] {
             take(picture, "shop-coupon-result");
             return press(SlotPlace::Step);
         },
         [&] { return m_people.givePin(PeopleWalk::kForemansPin); },
         [&] {
             take(picture, "shop-tests");
             emit flow().listPage()->chosen(0);
             settle();
             return press(SlotPlace::Step); // to put right
         },
         [&] { return choose("Forces"); },
         [&] { return number("3810"); },
         [&] { return number("12"); },
         [&] {
             take(picture, "shop-coupon-thickness");
             return number("14.2");
         },
         [&] { return press(SlotPlace::Stop); },
         [&] { return press(SlotPlace::Stop); },
         [&] { return press(SlotPlace::Step); },
         [&] {
             take(picture, "shop-coupon-why");
             flow().namePage()->setName(QStringLiteral("typed from the wrong sheet"));
             return press(SlotPlace::Step);
         },
         [&] { return m_people.givePin(PeopleWalk::kForemansPin); },
         [&] {
             settle();
             emit flow().listPage()->chosen(0);
             take(picture, "shop-series");
             return flow().listPage()->view().rows.size() >= 4 ? Result<void>()
                                                               : stopped("a version is hidden");
         },
         [&] { return press(SlotPlace::Step); },
         [&] {
             take(picture, "shop-coupon-put-right");
             return choose("One number");
         },
         [&] {
             take(picture, "shop-coupon-which");
             return press(SlotPlace::Stop); // nothing is kept
         },
         [&] {
             settle();
             emit flow().listPage()->chosen(0);
             return expect(flow().listPage(), "the series did not come back");
         }});
}

Result<void> ShopWalk::bent(const Picture& picture) {
    return inOrder(
        {[&] { return open(); }, [&] { return choose("Strength tests"); },
         [&] { return press(SlotPlace::Step); }, [&] { return choose("Bent, of a trial"); },
         [&] {
             take(picture, "shop-coupon-procedure");
             emit flow().choicePage()->chosen(0);
             settle();
             return number("8");
         },
         [&] {
             take(picture, "shop-coupon-bent-how");
             return choose("Travel of the ram");
         },
         [&] { return number("23.4"); },
         [&] {
             take(picture, "shop-coupon-cracked");
             emit flow().choicePage()->chosen(0);
             settle();
             return press(SlotPlace::Stop);
         },
         [&] { return choose("Tested by"); },
         [&] {
             take(picture, "shop-coupon-standard");
             flow().namePage()->setName(QStringLiteral("EN 12814-1"));
             return press(SlotPlace::Step);
         },
         [&] { return choose("Welded by"); },
         [&] {
             take(picture, "shop-coupon-welder");
             emit flow().choicePage()->chosen(0);
             settle();
             return expect(flow().listPage(), "the result did not come back");
         },
         [&] {
             take(picture, "shop-coupon-trial");
             return press(SlotPlace::Step);
         },
         [&] { return m_people.givePin(PeopleWalk::kForemansPin); },
         [&] {
             settle();
             return flow().listPage()->view().rows.size() == 2 ? Result<void>()
                                                               : stopped("the bend test is gone");
         }});
}

Result<void> ShopWalk::charts(const Picture& picture) {
    return inOrder(
        {[&] { return open(); }, [&] { return choose("Charts"); },
         [&] {
             take(picture, "shop-charts");
             emit flow().listPage()->chosen(0);
             take(picture, "shop-chart");
             return expect(flow().chartPage(), "no chart came");
         },
         [&] { return press(SlotPlace::Step); }});
}

Result<void> ShopWalk::due(const Picture& picture) {
    return inOrder(
        {[&] { return open(); }, [&] { return choose("What is due"); },
         [&] { return press(SlotPlace::Back); },
         [&] {
             take(picture, "shop-due");
             return expect(flow().listPage(), "what is due is not listed");
         }});
}

Result<void> ShopWalk::batches(const QString& batch, const char* joint, const Picture& picture) {
    return inOrder(
        {[&] { return open(); }, [&] { return choose("Batches of sheet"); },
         [&] {
             flow().listPage()->setLine(batch);
             return press(SlotPlace::Step);
         },
         [&] {
             take(picture, "shop-batch");
             return flow().listPage()->view().rows.empty() ? stopped("the batch is in no joint")
                                                           : Result<void>();
         },
         [&] { return press(SlotPlace::Back); },
         [&] {
             flow().listPage()->setLine(QString::fromLatin1(joint));
             return press(SlotPlace::Step);
         },
         [&] {
             take(picture, "shop-joints-sheets");
             emit flow().listPage()->chosen(0); // to the joints of its first sheet's batch
             settle();
             emit flow().listPage()->chosen(0);
             settle();
             return m_window.page() == PageKind::Day ? Result<void>()
                                                     : stopped("the joint's page did not come");
         }});
}

Result<void> ShopWalk::all(const Picture& picture) {
    return inOrder(
        {[&] { return open(); },
         [&] {
             take(picture, "shop");
             return jobs(picture);
         },
         [&] { return table(picture); }, [&] { return seamByHand(picture); },
         [&] { return plan(picture); }, [&] { return pulled("1", picture); },
         [&] { return bent(picture); }, [&] { return charts(picture); },
         [&] { return due(picture); },
         [&] { return batches(QStringLiteral("VP-40688"), "1", picture); }});
}

} // namespace seamclock
