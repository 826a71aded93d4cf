#pragma once

#include "app/desktop/sound.h"

#include <QDialog>

class QLabel;
class QPushButton;

namespace app::desktop {

class HelpSheet;
class Theme;

/// Plays each pattern and asks whether it was heard. Can be passed over; the
/// screen then says what that means. What still sounds at its end is for whoever asked to silence.
class SoundCheck : public QDialog {
    Q_OBJECT

public:
    enum class Verdict { Heard, PassedOver, Cancelled };

    SoundCheck(const Theme& theme, Sound& sound, QWidget* parent);

    [[nodiscard]] Verdict verdict() const { return m_verdict; }

private:
    void build();
    void buildHelp();
    void arrangeHelp();
    QWidget* patternRow(core::alarm::Kind kind, core::alarm::Subject subject, const QString& name,
                        const QString& what, const QString& object);
    QWidget* makeAnswers();
    void follow();
    void makeMain(QPushButton* main, QPushButton* other);
    void advise();
    void end(Verdict verdict);

    const Theme& m_theme;
    Sound& m_sound;
    QWidget* m_check;
    HelpSheet* m_help;
    QLabel* m_health;
    QPushButton* m_heard;
    QPushButton* m_passOver;
    Verdict m_verdict = Verdict::Cancelled;
};

}  // namespace app::desktop
