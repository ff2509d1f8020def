#!/usr/bin/env bash
# Whole-process time of the command line: median of RUNS (default 11) runs after one warm-up, and the ratio to `--help`, which is start-up alone.
set -euo pipefail
root=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd)
runs=${RUNS:-11}
plan=$root/examples/laundry-room.yaml
"$root/runnel" --help >/dev/null

median() {
  "$root/runnel" "$@" >/dev/null
  for ((i = 0; i < runs; i++)); do
    local begun=$(date +%s%N)
    "$root/runnel" "$@" >/dev/null
    echo $((($(date +%s%N) - begun) / 1000000))
  done | sort -n | sed -n "$(((runs + 1) / 2))p"
}

base=$(median --help)
printf '%-24s %6s ms   ratio\n' command median
printf '%-24s %6d ms   1.0\n' --help "$base"
for args in "cost --draws 0" "cost" "check" "balance"; do
  # shellcheck disable=SC2086
  took=$(median ${args%% *} "$plan" ${args#"${args%% *}"})
  printf '%-24s %6d ms   %s\n' "$args" "$took" "$(awk "BEGIN { printf \"%.1f\", $took / $base }")"
done
