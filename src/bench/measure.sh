#!/usr/bin/env bash
# Measures target/contrapposto (mvn -DskipTests package makes it) on an idle machine. Prints wall and processor seconds and the
# peak resident memory. Needs GNU time at /usr/bin/time. Rows: ROWS=1000 and LONG=10000 unless set.
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

spec=$home/programs/newcomer-right.yaml
echo "== cold, without what bin/prepare makes (median of 5)"
rm -rf "$home/start"
echo "--help: $(several "$home/bin/contrapposto" --help)"
echo "build:  $(several "$home/bin/contrapposto" build "$spec" -o "$work/cold" --again --quiet)"
echo "== cold, after bin/prepare (median of 5)"
"$home/bin/prepare"
echo "--help: $(several "$home/bin/contrapposto" --help)"
echo "build:  $(several "$home/bin/contrapposto" build "$spec" -o "$work/cold" --again --quiet)"

echo "== roster of $rows, client edition, both cores"
cp "$spec" "$work/base.yaml"
roster base.yaml "$rows" > "$work/many.csv"
CONTRAPPOSTO_JAVA_OPTIONS="-Xmx128m" once timeout 240 "$home/bin/contrapposto" build "$work/many.csv" -o "$work/many" --edition client --quiet
echo "handouts written: $(find "$work/many" -name '*-client.pdf' | wc -l)"
echo "== the same again: all left as they are"
CONTRAPPOSTO_JAVA_OPTIONS="-Xmx128m" once timeout 60 "$home/bin/contrapposto" build "$work/many.csv" -o "$work/many" --edition client --quiet || true

echo "== flat heap: referral pages for $rows and $long rows with -Xmx64m"
sed -e '/^screening:/,/resting-blood-pressure/c\screening: {chest-pain: yes}' "$spec" > "$work/held.yaml"
for n in "$rows" "$long"; do
  roster held.yaml "$n" > "$work/held.csv"
  CONTRAPPOSTO_JAVA_OPTIONS="-Xmx64m" once timeout 200 "$home/bin/contrapposto" build "$work/held.csv" -o "$work/held-$n" --quiet || true
  echo "pages written: $(find "$work/held-$n" -name '*-referral.pdf' | wc -l)"
done
