#pragma once

#include "app/desktop/help/strand_sample.h"

#include <QString>
#include <Qt>

#include <vector>

namespace app::desktop {

/// What a page is for, what its picture shows, which keys it has, and where to go next.
struct HelpText {
    /// A shape of the picture beside what it means.
    struct Shape {
        StrandSample::Kind kind;
        QString meaning;
    };
    /// What a key does. The keys are those of the window's parts and actions of these names, so that no
    /// second list of keys can become untrue; only keys that no part has as a shortcut of its own are named
    /// here.
    struct Key {
        std::vector<const char*> parts;
        QString what;
        std::vector<Qt::Key> others{};
    };

    QString title;
    std::vector<QString> paragraphs;
    std::vector<Shape> shapes;
    std::vector<Key> keys;
};

enum class HelpFor { Setup, Lanes, Records, Sound };

/// In the language that is used now.
HelpText helpText(HelpFor page);

}  // namespace app::desktop
