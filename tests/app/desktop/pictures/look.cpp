#include "tests/app/desktop/pictures/look.h"

namespace pictures {

using app::desktop::Theme;

QString Look::name() const
{
    QString name = language + QLatin1Char{'-'} + theme;
    if (size != Look{}.size)
        name += QStringLiteral("-%1x%2").arg(size.width()).arg(size.height());
    if (text != Look{}.text)
        name += QStringLiteral("-text-%1").arg(text);
    return name;
}

std::vector<Look> looks()
{
    std::vector<Look> all;
    for (const char* theme : {"light", "dark", "contrast", "dark-contrast"})
        all.push_back({.theme = QLatin1String{theme}});
    for (const char* language : {"de", "fr", "es"})
        all.push_back({.language = QLatin1String{language}});
    for (const QSize& size : {QSize{1920, 1080}, QSize{3840, 2160}})
        all.push_back({.size = size});
    for (const int text : {150, 200})
        all.push_back({.text = text});
    return all;
}

Theme::Choice choiceOf(const QString& theme)
{
    if (theme == QLatin1String{"contrast"})
        return Theme::Choice::HighContrast;
    if (theme == QLatin1String{"dark-contrast"})
        return Theme::Choice::DarkHighContrast;
    return theme == QLatin1String{"dark"} ? Theme::Choice::Dark : Theme::Choice::Light;
}

}  // namespace pictures
