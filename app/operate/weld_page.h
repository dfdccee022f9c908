// The operator's screen of one weld, from the first check to the saved joint.
#pragma once

#include "app/operate/weld_view.h"
#include "app/pages/page.h"

namespace seamclock {

/// Where everything of this view stands.
FrameKind frameKindOf(const WeldView& view);

class WeldPage : public Page {
    Q_OBJECT

public:
    explicit WeldPage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const WeldView& view);
    const WeldView& view() const { return m_view; }

protected:
    void place() override;

private:
    void showField();

    WeldView m_view;
    ChangeoverField* m_field;
    ScalePanel* m_scale;
    SeamPicture* m_seam;
    CheckPicture* m_drawing;
    Lamp* m_lamp;
    Sentence* m_sentence;
    Ribbon* m_ribbon;
    CheckRow* m_checks;
};

} // namespace seamclock
