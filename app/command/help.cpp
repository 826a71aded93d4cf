#include "app/command/help.h"

namespace app::command {

namespace {

constexpr const char* program = R"(Usage: basinbell COMMAND [OPTION]... [FILE]

Plans when each zone of a colour service is mixed, applied, looked at and rinsed, and keeps time while it runs.

  plan FILE...      print the timetable of one head, or of several on one crew
  explain FILE...   say why nothing fits, and what would help
  forecast FILE...  say how likely a plan keeps its limits, and how far it spreads
  check FILE        say what is wrong with a service file
  run FILE          run a service: what to do now, the lanes, the alarms
  replay            tell a run of the journal again
  card              print the record card of a run: what really happened, and how it turned out
  erase --of N      erase from the journal what could name a person
  cautions          what comes before any plan

  --help            this text; after a command, the options of that command
  --version         the version

FILE is a service file; - reads it from standard input. The exit status is 0 when all went well, 2 when nothing
fits, 1 when something was wrong with the file or the command.
)";

constexpr const char* plan = R"(Usage: basinbell plan [OPTION]... FILE...

Plans the service in FILE (- is standard input) and prints the timetable. Several files are planned together: several
heads on one crew. The files name the same crew, or only some name one, or --crew says whose it is.

  --json                the whole plan as JSON, as docs/plan-json.md describes it
  --from TIME           nothing starts before TIME: 14:30, 2026-03-14T14:30, or 2026-03-14T14:30+01:00, by the clocks
                        of the service; otherwise from the next full minute on
  --preference WHAT     as-asked: start late if there is a promise, else end early (usual)
                        start-late: start as late as the promise allows
                        end-early: be done as early as possible
  --look-all            name every look that does not fall due, not only how many
  --crew FILE           the crew of the service in FILE does it, whatever the files say
  --seconds N           plan for N seconds at most (several heads: 10 if not said); the timetable says whether the plan
                        is proved best, or how far from the best it can be
  --help                this text

The exit status is 0 when a plan was found, 2 when nothing fits (the reason is printed), 1 when the file is wrong.
)";

constexpr const char* explain = R"(Usage: basinbell explain [OPTION]... FILE...

Says why nothing fits for the service in FILE (- is standard input): what cannot hold together, and changes of the
service that were each planned and fit, the least change first. Where it fits, says what keeps the zones from being
nearer their targets. Several files are planned together, as by plan.

  --cure N              show the plan with the Nth change made
  --save NEW            with --cure N: save the changed service in the file NEW (- is standard output); of several,
                        the one that is changed
  --json                everything as JSON, as docs/explanation-json.md describes it; with --cure N, that plan
  --crew FILE           as in plan
  --from TIME           as in plan
  --preference WHAT     as in plan
  --seconds N           look for changes for N seconds at most (20 if not said)
  --help                this text

The exit status is 0 when it fits or the changed service was saved, 2 when nothing fits, 1 when the file or the command
is wrong.
)";

constexpr const char* forecast = R"(Usage: basinbell forecast [OPTION]... FILE...

Plans the service in FILE (- is standard input) and follows the plan many times over, with applying as quick and as slow
as the service says it may be, each step as planned where that keeps the limits and else as near as may be. Says how
often each zone stays inside its limits, how its development and the water spread, and which application that hangs on
most.

  --runs N              follow it N times (2000 if not said)
  --seed N              draw the lengths from N on (1 if not said): the same N, the same forecast
  --json                as JSON, as docs/forecast-json.md describes it
  --crew FILE           as in plan
  --from TIME           as in plan
  --preference WHAT     as in plan
  --help                this text

The exit status is 0 when a forecast was made, 2 when nothing fits, 1 when the file or the command is wrong.
)";

constexpr const char* check = R"(Usage: basinbell check FILE

Reads the service in FILE (- is standard input) and prints everything that is wrong with it, a line each, with its
place. It plans nothing. The exit status is 0 when nothing is wrong, else 1.
)";

constexpr const char* run = R"(Usage: basinbell run [OPTION]... FILE
       basinbell run [OPTION]... --resume [FILE]

Runs the service in FILE in the terminal. Every answer is kept before it counts: if the program stops, however it
stops, the run can be taken up again where it stood.

  --resume              take up the latest run that was not ended, of FILE if one is given; if there is none and a FILE
                        is given, begin it
  --speed N             play at it: N seconds pass in one, from the next full minute or, if there is time, from three
                        minutes before the first task. Such a run does not go by the time of day
  --from TIME           play at it from TIME on, as in plan
  --preference WHAT     as in plan
  --answer-all          answer every question at its time, as planned
  --sound-file FILE     write the alarms to a sound file (WAV). When played faster than real time, a silence
                        of more than 3 seconds becomes 3 seconds, and each alarm is printed with its place in the file
  --data DIR            keep the run in DIR (otherwise in $BASINBELL_DATA, else in the usual place of the system)
  --help                this text

)";

constexpr const char* replay = R"(Usage: basinbell replay [OPTION]... [FILE]

Tells a run of the journal again, from its facts alone: what was said, what that changed in the plan, and what sounded. With
FILE, another service with the same tasks: the same facts as if they had been planned by that one.

  --list                the runs of the journal, the latest first
  --of N                the run with the number N (the latest if not said)
  --at TIME             how everything stood at TIME, as in plan, by what was known then
  --speed N             N seconds pass in one (at once if not said)
  --data DIR            as in run
  --help                this text

)";

constexpr const char* card = R"(Usage: basinbell card [OPTION]...

Prints the record card of a run of the journal: of each zone when its bowl was mixed, when the first and the last strand were
covered, when water came, how long it developed beside its window and target, and how it turned out; the looks with what was
seen, heat, what was left out or changed while it went on, and what to think of next time.

  --of N                the run with the number N (the latest that was ended if not said); basinbell replay --list says
                        which there are
  --data DIR            as in run
  --help                this text

)";

constexpr const char* erase = R"(Usage: basinbell erase [OPTION]... --of N

Erases from the journal whatever of the run with the number N could name a person: the service with its names and notes,
what changed it, and what was said of tones, of how it turned out and for next time. The facts stay, which are places
and times, and the words that were picked; the run cannot be told again. It must have been ended. There is no way back.

  --of N                the run with the number N; basinbell replay --list says which there are
  --data DIR            as in run
  --help                this text

)";

constexpr const char* keys = R"(While it runs, type and press Enter:

  (only Enter)   done: what is asked for now has begun, has ended, or was looked at and is left
  l              leave it: looked at, as planned
  all            leave every look that is to be made with this one
  a N            look again in N minutes
  r [ZONE]       rinse this zone, or ZONE, now and on its own; r! although its neighbours get wet
  l: WORDS       with any answer to a look, behind a colon: what was seen (a 5: still yellow); tone lists words to pick
  s              skip it: it will not be done
  u              undo the last answer
  m N            the last answer happened N minutes ago; m 14:03: at that time
  was ZONE       the last answer was about ZONE, not the zone it says
  answers        the last answers with their numbers; u #12, m 14:03 #12 and was ZONE #12 put an earlier one right
  out ZONE: WORDS
                 how ZONE turned out, once it is rinsed (out Root: too warm, brassy at the nape); out lists words to pick
  note: WORDS    what to think of next time
  2 ...          the same for the second thing on the list: 2, 2 l, 2 a 5, 2 s
  stop           applying stops before it is done; the rest becomes a zone of its own
  apart ZONE     rinse ZONE by itself when its time comes; its neighbours must stay dry
  away N [NAME]  away for N minutes from now on, NAME or the first of the crew
  here NAME      NAME has come to help
  gone NAME      NAME has gone for good
  heat [N]       heat is over the head, to be taken off after N minutes; heat off when it is
  add NAME like ZONE [N]
                 a zone more, as ZONE is, which takes N minutes to apply
  give-up        begin nothing more of this coat; what is on the hair is still rinsed
  w              what can be chosen, where not every limit can hold; w 2 takes the second
  mute           silence for two minutes what is most urgent of what sounds; unmute ends that
  c              the cautions
  e              end the run for good
  q              leave: the run is kept, and basinbell run --resume takes it up
  ?              these keys
)";

constexpr const char* cautions = R"(Usage: basinbell cautions

Prints what comes before any plan.
)";

}  // namespace

QString keysText()
{
    return QString::fromUtf8(keys);
}

QString helpText(const QString& command)
{
    if (command == QLatin1String{"plan"})
        return QString::fromUtf8(plan);
    if (command == QLatin1String{"explain"})
        return QString::fromUtf8(explain);
    if (command == QLatin1String{"forecast"})
        return QString::fromUtf8(forecast);
    if (command == QLatin1String{"check"})
        return QString::fromUtf8(check);
    if (command == QLatin1String{"run"})
        return QString::fromUtf8(run) + keysText();
    if (command == QLatin1String{"replay"})
        return QString::fromUtf8(replay);
    if (command == QLatin1String{"card"})
        return QString::fromUtf8(card);
    if (command == QLatin1String{"erase"})
        return QString::fromUtf8(erase);
    if (command == QLatin1String{"cautions"})
        return QString::fromUtf8(cautions);
    return QString::fromUtf8(program);
}

}  // namespace app::command
