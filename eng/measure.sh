#!/usr/bin/env bash
# Measures the command from a warm launcher, as docs/performance.md quotes it, in milliseconds.
# Usage: eng/measure.sh [rounds]
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
rounds=${1:-15}
large="$root/artifacts/large-game"
TIMEFORMAT='%R %U %S'

# Builds the command where that is due, and fills the file cache.
"$root/rostrum" check "$root/games/kiln-night" > /dev/null || true
dotnet run -c Release --project "$root/benchmarks/Rostrum.Benchmarks" -- write-large "$large"

# Findings (exit 1) are no failure of the measurement.
run() { "$root/rostrum" "$@" > /dev/null 2>&1 || [ $? -eq 1 ]; }

measure() {
  local name=$1 i
  shift
  for ((i = 0; i < rounds; i++)); do
    { time run "$@"; } 2>&1
  done | awk '{ print 1000 * $1, 1000 * ($2 + $3) }' | sort -n | awk -v name="$name" '
    { wall[NR] = $1; if (NR == 1 || $2 < cpu) cpu = $2 }
    END { printf "| %s | %d | %d | %d |\n", name, wall[1], wall[int((NR + 1) / 2)], cpu }'
}

printf '| command | least wall | median wall | least processor time |\n| --- | --- | --- | --- |\n'
measure '--help' --help
measure 'tally games/kiln-night E1' tally "$root/games/kiln-night" E1
measure 'rule games/kiln-night E1 "place iron bowl on D2"' rule "$root/games/kiln-night" E1 'place iron bowl on D2'
measure 'check games/kiln-night' check "$root/games/kiln-night"
measure 'check of 1,000 clauses and cards' check "$large"
if [ -r /proc/self/status ]; then
  "$root/rostrum" check "$large" > /dev/null 2>&1 &
  peak=0
  while now=$(awk '/VmHWM/ { print $2 }' "/proc/$!/status" 2> /dev/null) && [ -n "$now" ]; do
    if [ "$now" -gt "$peak" ]; then peak=$now; fi
  done
  printf '\nMost memory that the check of 1,000 clauses and cards held: %s MB.\n' $((peak / 1000))
fi
