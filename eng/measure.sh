#!/usr/bin/env bash
# Measures the command from a warm launcher, as docs/performance.md quotes it: wall clock in milliseconds, least and median of the rounds.
# Usage: eng/measure.sh [rounds]
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
rounds=${1:-15}
large="$root/artifacts/large-game"

# Builds the command where that is due, and fills the file cache.
"$root/rostrum" check "$root/games/kiln-night" > /dev/null || true
dotnet run -c Release --project "$root/benchmarks/Rostrum.Benchmarks" -- write-large "$large"

measure() {
  local name=$1 times=() before after i
  shift
  for ((i = 0; i < rounds; i++)); do
    before=$(date +%s%N)
    "$root/rostrum" "$@" > /dev/null || [ $? -eq 1 ]
    after=$(date +%s%N)
    times+=($(((after - before) / 1000000)))
  done
  mapfile -t times < <(printf '%s\n' "${times[@]}" | sort -n)
  printf '| %s | %s | %s |\n' "$name" "${times[0]}" "${times[$((rounds / 2))]}"
}

printf '| command | least ms | median ms |\n| --- | --- | --- |\n'
measure 'check games/kiln-night' check "$root/games/kiln-night"
measure 'tally games/kiln-night E1' tally "$root/games/kiln-night" E1
measure 'rule games/kiln-night E1 "place iron bowl on D2"' rule "$root/games/kiln-night" E1 'place iron bowl on D2'
measure 'check of 1,000 clauses and cards' check "$large"
if [ -r /proc/self/status ]; then
  "$root/rostrum" check "$large" > /dev/null &
  peak=0
  while now=$(awk '/VmHWM/ { print $2 }' "/proc/$!/status" 2> /dev/null) && [ -n "$now" ]; do
    if [ "$now" -gt "$peak" ]; then peak=$now; fi
  done
  printf '\nMost memory that the check of 1,000 clauses and cards held: %s MB.\n' $((peak / 1000))
fi
