#include "cli/help.hpp"

namespace cairn::cli {

const char* const program_help = R"(Examples:
  cairn prove append.yaml               is it sound? if not, how does it fail?
  cairn prove append.yaml --crashes 1   and if a device crashes on the way?
  cairn why append.yaml                 what is each step for? what mends it?
  cairn export append.yaml --property no-split --to questions
                                        the proof, for another solver to check
  cairn walk append.yaml                what happens when all goes well
  cairn lint append.yaml                what is odd about it

cairn proves that a procedure grows a running stack of switches without an
outage, or shows the shortest way in which it goes wrong.)";

const char* const prove_help = R"(Examples:
  cairn prove append.yaml
  cairn prove append.yaml --property no-split --cable-breaks 2
  cairn prove append.yaml --property tolerates-loss=2
  cairn prove change-*.yaml --quiet --time-limit 60
  cairn prove append.yaml --format json > verdict.json

Settles every property that the procedure asks for: proved for every order,
every duration of a start and every placing of the faults allowed, or refuted by
a shortest run. PROCEDURE is a file, or - for standard input.

Exit status: 0 all proved; 1 one is refuted; 2 the input or the call is wrong;
3 none is refuted and one is undecided; 70 no answer (cairn contradicts itself,
or could not write); 130 interrupted.)";

const char* const why_help = R"(Examples:
  cairn why append.yaml
  cairn why append.yaml --property primary-stays
  cairn why append.yaml --crashes 1 --time-limit 60
  cairn why append.yaml --drop-one
  cairn why append.yaml --format json > why.json

Settles what "cairn prove" settles, and tells why: what each step, each wait and
each ordering is needed for, which changes would mend what is refuted, and which
rules of the platform decided. Each answer comes from proving the procedure once
more with that one thing changed. With --drop-one it tells instead which awaits,
checks, saves and orderings protect nothing that is asked, and what breaks
without each of the others. PROCEDURE is a file, or - for standard input.

Exit status: as that of "cairn prove".)";

const char* const export_help = R"(Examples:
  cairn export append.yaml --property primary-stays --to questions
  cairn export append.yaml --property no-split --crashes 1 --to questions

Settles one property and writes down as questions in SMT-LIB 2.6 what there is
to check about the verdict, for any solver to answer: one file a question, each
with the answer that is expected, and README.txt with what they show. DIR is
made where it is missing; one that holds anything but an earlier export is left
alone. PROCEDURE is a file, or - for standard input.

Exit status: 0 written; 2 the input, the call or DIR is wrong; 3 the property is
undecided, and nothing is written; 70 no answer; 130 interrupted.)";

const char* const walk_help = R"(Examples:
  cairn walk append.yaml
  cairn walk append.yaml --events verdict.json
  cairn walk append.yaml --events verdict.json --property no-split

Walks the procedure step by step: the run without faults, in the order of the
file, or a refutation that "cairn prove --format json" wrote. PROCEDURE is a
file, or - for standard input.

Exit status: 0 the run is complete, or breaks what the refutation says; 1 it
ends early or a step is refused; 2 the input or the call is wrong; 70 no answer.)";

const char* const lint_help = R"(Examples:
  cairn lint append.yaml
  cairn lint platforms/*.yaml sites/*.yaml procedures/*.yaml

Reads procedures, sites and platforms and tells every problem, and in procedures
also what is allowed but odd: steps that are never reached, waits that never
wait and the like. FILE may be - for standard input.

Exit status: 0 nothing found; 1 findings; 2 problems, or a wrong call; 3 cut
short by a limit; 70 no answer; 130 interrupted.)";

}  // namespace cairn::cli
