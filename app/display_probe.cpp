#include <QGuiApplication>

/// Ends well only where a display really answers; Qt ends the program itself where none does. For app/start.
int main(int argc, char* argv[])
{
    const QGuiApplication application{argc, argv};
    return 0;
}
