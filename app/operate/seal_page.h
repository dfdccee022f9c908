// The day's seal on the screen: on one side what it covers, on the other its fingerprint, large
// enough to be copied by hand from an arm's length.
#pragma once

#include "app/operate/seal_view.h"

namespace seamclock {

class SealLines : public Part {
public:
    explicit SealLines(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SealView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    SealView m_view;
};

class Fingerprint : public Part {
public:
    explicit Fingerprint(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SealView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    SealView m_view;
};

class SealPage : public Page {
    Q_OBJECT

public:
    explicit SealPage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const SealView& view);
    const SealView& view() const { return m_view; }

protected:
    void place() override;

private:
    SealView m_view;
    SealLines* m_lines;
    Fingerprint* m_fingerprint;
    Sentence* m_sentence;
};

} // namespace seamclock
