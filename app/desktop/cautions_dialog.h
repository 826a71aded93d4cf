#pragma once

#include <QDialog>

namespace app::desktop {

/// The cautions. They defer to the leaflet and to whoever is licensed, and reassure of nothing.
class CautionsDialog : public QDialog {
    Q_OBJECT

public:
    /// Before a first run on a person it asks whether to go on; at other times it is only there to be read.
    enum class Occasion { BeforeRun, Asked };

    CautionsDialog(Occasion occasion, QWidget* parent);
};

}  // namespace app::desktop
