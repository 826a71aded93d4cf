#pragma once

#include <QObject>
#include <QProcess>
#include <QString>

#include <optional>

namespace app::speech {

/// Has things said by a small program of its own, `basinbell-speech`, which is started with the first of
/// them. Never waits: where nothing can speak, nothing is said and nothing else happens.
class SpeechPlayer : public QObject {
    Q_OBJECT

public:
    /// The program that lies beside the running one.
    static QString usualProgram();

    explicit SpeechPlayer(const QString& program, const QString& language, QObject* parent = nullptr);
    ~SpeechPlayer() override;

    void say(const QString& text);
    void stop();

    /// Whether there is a voice; nothing while nothing has been said.
    [[nodiscard]] std::optional<bool> hasVoice() const { return m_hasVoice; }

Q_SIGNALS:
    void voiceKnown(bool there);

private:
    void tell(const QString& line);
    void readReports();
    void setVoice(bool there);

    QString m_program;
    QString m_language;
    QProcess m_process;
    std::optional<bool> m_hasVoice;
};

}  // namespace app::speech
