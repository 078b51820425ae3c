#!/usr/bin/env bash
# Measures target/contrapposto (mvn -DskipTests package makes it) on an idle machine. Prints wall and processor seconds, the
# peak resident memory, and for rosters handouts a second and the heap's peak. Needs GNU time at /usr/bin/time. Rows: ROWS=1000
# and LONG=10000 unless set; the first roster is stopped after LIMIT=420 seconds, that of small handouts after SMALL=720. ONLY=small
# measures that one alone.
set -euo pipefail
cd "$(dirname "$0")/../.."
home=$PWD/target/contrapposto
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
rows=${ROWS:-1000} long=${LONG:-10000}

once() { /usr/bin/time -f "%e s wall, %U s user, %S s system, %M KB peak" "$@" 2>&1 >/dev/null | tail -n 1; }
several() { for _ in 1 2 3 4 5; do once "$@"; done | sort -n | head -n 3 | tail -n 1; }
roster() { # base rows
  echo "spec,client.code,client.height,client.mass"
  for ((i = 0; i < $2; i++)); do echo "$1,C-$i,$((155 + i % 35)) cm,$((52 + i * 7 % 40)) kg"; done
}

# The heap's peak: the most in use before any collection, and the most still in use after one.
heap() {
  awk -F'[ >(-]+' '/Pause/ { for (i = 1; i < NF; i++) if ($i ~ /^[0-9]+M$/ && $(i + 1) ~ /^[0-9]+M$/) { b = $i + 0; a = $(i + 1) + 0; if (b > before) before = b; if (a > after) after = a; break } }
    END { printf "heap: %d MB at most before a collection, %d MB at most after one\n", before, after }' "$1"
}
# name csv limit-MB seconds ending options…: builds a roster, then says how many, how fast and in how much heap
roster_run() {
  local name=$1 csv=$2 megabytes=$3 most=$4 ending=$5 start end made
  shift 5
  start=$(date +%s.%N)
  CONTRAPPOSTO_JAVA_OPTIONS="-Xmx${megabytes}m -Xlog:gc:file=$work/$name.gc" once timeout "$most" \
    "$home/bin/contrapposto" build "$csv" -o "$work/$name" --quiet "$@" || true
  end=$(date +%s.%N)
  made=$(find "$work/$name" -name "*-$ending.pdf" | wc -l)
  awk -v n="$made" -v s="$start" -v e="$end" 'BEGIN { printf "written: %d, %.2f a second, start included\n", n, n / (e - s) }'
  heap "$work/$name.gc"
}

spec=$home/programs/newcomer-right.yaml
if [ "${ONLY:-}" != small ]; then
echo "== cold, without what bin/prepare makes (median of 5)"
rm -rf "$home/start"
echo "--help: $(several "$home/bin/contrapposto" --help)"
echo "build:  $(several "$home/bin/contrapposto" build "$spec" -o "$work/cold" --again --quiet)"
echo "== cold, after bin/prepare (median of 5)"
"$home/bin/prepare"
echo "--help: $(several "$home/bin/contrapposto" --help)"
echo "build:  $(several "$home/bin/contrapposto" build "$spec" -o "$work/cold" --again --quiet)"

limit=${LIMIT:-420}
cp "$spec" "$work/base.yaml"
echo "== roster of $rows, client edition, both cores, -Xmx128m, stopped after $limit s"
roster base.yaml "$rows" > "$work/many.csv"
roster_run many "$work/many.csv" 128 "$limit" client --edition client
echo "== the same again: what stands there is left as it is"
roster base.yaml 100 > "$work/hundred.csv"
roster_run hundred "$work/hundred.csv" 128 120 client --edition client > "$work/first"
roster_run hundred "$work/hundred.csv" 128 60 client --edition client

echo "== flat heap: referral pages for $rows and $long rows, -Xmx64m"
sed -e '/^screening:/,/resting-blood-pressure/c\screening: {chest-pain: yes}' "$spec" > "$work/held.yaml"
for n in "$rows" "$long"; do
  roster held.yaml "$n" > "$work/held.csv"
  roster_run "held-$n" "$work/held.csv" 64 200 referral
done
fi

echo "== flat heap: $long small handouts printed (src/bench/small.yaml: one week, one day, no log), client edition, -Xmx128m, stopped after ${SMALL:-720} s"
cp src/bench/small.yaml "$work/small.yaml"
for n in $((long / 10)) "$long"; do
  roster small.yaml "$n" > "$work/small.csv"
  roster_run "small-$n" "$work/small.csv" 128 "${SMALL:-720}" client --edition client
done
