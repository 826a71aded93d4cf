#include "app/view/choices_view.h"

namespace app::view {

ChoicesView choicesView(const std::vector<core::stagger::Choice>& choices, core::measure::Instant asOf,
                        core::measure::Instant now)
{
    ChoicesView view;
    view.asOf = asOf;
    view.age = now - asOf;
    view.old = view.age >= choicesHold;
    for (const core::stagger::Choice& choice : choices) {
        ChoiceView shown;
        shown.what = choice.what;
        shown.carriesOn = choice.kind == core::stagger::ChoiceKind::CarryOn;
        shown.limitsPassed = choice.plan->broken.size();
        for (const core::stagger::BrokenLimit& limit : choice.plan->broken)
            shown.passedBy += limit.by;
        shown.minutesShort = choice.under.minutes();
        shown.minutesPast = choice.over.minutes();
        view.choices.push_back(shown);
    }
    return view;
}

}  // namespace app::view
