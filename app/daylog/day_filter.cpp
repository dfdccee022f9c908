#include "app/daylog/day_filter.h"

#include "app/text/dates.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QStringList>

namespace seamclock {
namespace {

struct Filter {
    Q_DECLARE_TR_FUNCTIONS(Filter)
};

const std::optional<std::string>& valueOf(const DayFilter& filter, FilterBy by) {
    switch (by) {
    case FilterBy::Day:
        return filter.day;
    case FilterBy::Bench:
        return filter.bench;
    case FilterBy::Verdict:
        return filter.verdict;
    case FilterBy::Operator:
        return filter.by;
    case FilterBy::Material:
        return filter.material;
    case FilterBy::Job:
        break;
    }
    return filter.job;
}

std::optional<std::string>& valueOf(DayFilter& filter, FilterBy by) {
    return const_cast<std::optional<std::string>&>(
        valueOf(static_cast<const DayFilter&>(filter), by));
}

} // namespace

JointFilter asked(const DayFilter& filter, const DayNames& names) {
    JointFilter out;
    out.fromDay = out.toDay = filter.day;
    out.bench = filter.bench;
    out.verdict = filter.verdict;
    out.by = filter.by;
    out.material = filter.material;
    if (filter.job) {
        out.seams = filter.seams;
        out.job = filter.job; // a job without a name has the joints that no job was told of
    }
    if (!filter.words.trimmed().isEmpty()) {
        out.text = filter.words.toStdString();
        out.names = names.people;
    }
    return out;
}

QString valueWord(FilterBy by, const std::string& value, const DayNames& names) {
    switch (by) {
    case FilterBy::Day: {
        const QDate date = QDate::fromString(fromUtf8(value), Qt::ISODate);
        return dayWords(date);
    }
    case FilterBy::Bench:
        return names.bench(value);
    case FilterBy::Verdict:
        return value.empty() ? Filter::tr("Not finished") : verdictWord(std::string_view(value));
    case FilterBy::Operator:
        return names.person(value);
    case FilterBy::Material:
        return value.empty() ? Filter::tr("not said") : fromUtf8(value);
    case FilterBy::Job:
        break;
    }
    return value.empty() ? Filter::tr("this job") : fromUtf8(value);
}

QString filterText(const DayFilter& filter, FilterBy by, const DayNames& names) {
    const std::optional<std::string>& value = valueOf(filter, by);
    return value ? valueWord(by, *value, names) : Filter::tr("all");
}

QString searchText(const DayFilter& filter, const DayNames& names) {
    QStringList words;
    if (!filter.words.isEmpty()) {
        words << QStringLiteral("“%1”").arg(filter.words);
    }
    for (const FilterBy by : {FilterBy::Operator, FilterBy::Material, FilterBy::Job}) {
        if (const auto& value = valueOf(filter, by)) {
            words << valueWord(by, *value, names);
        }
    }
    return words.isEmpty() ? Filter::tr("Search") : words.join(QStringLiteral(", "));
}

ChoiceView filterQuestion(
    const DayFilter& filter, FilterBy by, const std::vector<std::string>& values,
    const DayNames& names) {
    ChoiceView view;
    switch (by) {
    case FilterBy::Day:
        view.title = Filter::tr("Joints of which day?");
        break;
    case FilterBy::Bench:
        view.title = Filter::tr("Joints of which bench?");
        break;
    case FilterBy::Verdict:
        view.title = Filter::tr("Joints with which verdict?");
        break;
    case FilterBy::Operator:
        view.title = Filter::tr("Joints of which operator?");
        break;
    case FilterBy::Material:
        view.title = Filter::tr("Joints in which material?");
        break;
    case FilterBy::Job:
        view.title = Filter::tr("Joints of which job?");
        break;
    }
    const std::optional<std::string>& now = valueOf(filter, by);
    ChoiceView::Choice all;
    all.text = by == FilterBy::Day ? Filter::tr("All days") : Filter::tr("All");
    all.chosen = !now;
    view.choices.push_back(all);
    for (const std::string& value : values) {
        ChoiceView::Choice choice;
        choice.text = valueWord(by, value, names);
        if (by == FilterBy::Day) {
            choice.under = fullDayWords(value);
        }
        choice.chosen = now == value;
        view.choices.push_back(choice);
    }
    if (isEarlier(by, values, static_cast<int>(values.size()) + 1)) {
        ChoiceView::Choice earlier;
        earlier.text = Filter::tr("Earlier …");
        view.choices.push_back(earlier);
    }
    view.narrow = true;
    view.back = hiddenSlot();
    view.stop = hiddenSlot();
    view.step = stepSlot(Filter::tr("Back to the log"), false);
    return view;
}

bool isEarlier(FilterBy by, const std::vector<std::string>& values, int index) {
    return by == FilterBy::Day && values.size() == kMostDays &&
           index == static_cast<int>(values.size()) + 1;
}

DayFilter chosen(DayFilter filter, FilterBy by, const std::vector<std::string>& values, int index) {
    std::optional<std::string>& value = valueOf(filter, by);
    value.reset();
    if (index > 0) {
        value = values.at(static_cast<std::size_t>(index - 1));
    }
    return filter;
}

} // namespace seamclock
