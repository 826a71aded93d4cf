#include "app/speech/speech_player.h"

#include <QCoreApplication>
#include <QDir>

namespace app::speech {
namespace {

constexpr int farewellMilliseconds = 300;

}  // namespace

QString SpeechPlayer::usualProgram()
{
    return QDir{QCoreApplication::applicationDirPath()}.filePath(QStringLiteral("basinbell-speech"));
}

SpeechPlayer::SpeechPlayer(const QString& program, const QString& language, QObject* parent)
    : QObject{parent}
    , m_program{program}
    , m_language{language}
{
    m_process.setStandardErrorFile(QProcess::nullDevice());
    connect(&m_process, &QProcess::readyReadStandardOutput, this, &SpeechPlayer::readReports);
    // It is started anew with the next thing to say.
    connect(&m_process, &QProcess::finished, this, [this] { setVoice(false); });
    connect(&m_process, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart)
            setVoice(false);
    });
}

SpeechPlayer::~SpeechPlayer()
{
    m_process.disconnect(this);
    m_process.closeWriteChannel();  // It ends by itself when nobody has anything to say any more.
    if (!m_process.waitForFinished(farewellMilliseconds))
        m_process.kill();
    m_process.waitForFinished(farewellMilliseconds);
}

void SpeechPlayer::say(const QString& text)
{
    if (m_process.state() == QProcess::NotRunning)
        m_process.start(m_program, {m_language});
    tell(QStringLiteral("say ") + text.simplified());  // One line, whatever a zone is called.
}

void SpeechPlayer::stop()
{
    tell(QStringLiteral("stop"));
}

void SpeechPlayer::tell(const QString& line)
{
    if (m_process.state() != QProcess::NotRunning)
        m_process.write((line + QLatin1Char{'\n'}).toUtf8());
}

void SpeechPlayer::readReports()
{
    while (m_process.canReadLine()) {
        const QByteArray report = m_process.readLine().trimmed();
        if (report == "voice yes" || report == "voice no")
            setVoice(report == "voice yes");
    }
}

void SpeechPlayer::setVoice(bool there)
{
    if (m_hasVoice == there)
        return;
    m_hasVoice = there;
    Q_EMIT voiceKnown(there);
}

}  // namespace app::speech
