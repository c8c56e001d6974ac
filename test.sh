#!/usr/bin/env bash
# Builds everything once and runs every test. The last line is "N passed, N failed".
# Exit: 0 all passed; 1 something failed, did not build, or nothing ran.
set -u -o pipefail
cd "$(dirname "$0")"
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 NO_COLOR=1

passed=0
failed=0

finish() {
  echo "$passed passed, $failed failed"
  if [ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]; then exit 0; fi
  exit 1
}

stop() {
  echo "test.sh: $1" >&2
  failed=$((failed + 1))
  finish
}

# A browser for the page tests, the reference solver that circuits are compared with, and a database server for the storage tests.
have_browser() { command -v chromium >/dev/null || command -v chromium-browser >/dev/null || command -v google-chrome >/dev/null; }
have_postgres() { ls /usr/lib/postgresql/*/bin/initdb >/dev/null 2>&1; }
have_solver() { ldconfig -p 2>/dev/null | grep -q 'libngspice\.so\.0'; }

install_missing() {
  local wanted=()
  have_browser || wanted+=(chromium)
  have_solver || wanted+=(libngspice0)
  have_postgres || wanted+=(postgresql)
  [ "${#wanted[@]}" -eq 0 ] && return 0
  if ! command -v apt-get >/dev/null; then
    echo "Missing: ${wanted[*]}. This script installs them on Debian only; on another system install Chromium, PostgreSQL and" >&2
    echo "the shared library libngspice.so.0 by its own means, then run it again." >&2
    return 1
  fi
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    if ! sudo -n true 2>/dev/null; then
      echo "Missing: ${wanted[*]}. Install them once as root:  apt-get install ${wanted[*]}" >&2
      return 1
    fi
    as_root=(sudo -n)
  fi
  echo "Installing ${wanted[*]} ..."
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update -qq &&
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${wanted[@]}" >/dev/null
}

command -v dotnet >/dev/null || stop "the .NET SDK 10 is missing (https://dotnet.microsoft.com/download)."
install_missing || stop "what the tests need could not be installed."

echo "Restoring ..."
dotnet restore Slowglow.slnx --locked-mode -v q || stop "packages could not be restored as locked."
dotnet tool restore -v q >/dev/null || stop "the formatter could not be restored."

echo "Checking the layout of files ..."
if dotnet csharpier check . ; then passed=$((passed + 1)); else
  echo "Lay them out with: dotnet csharpier format ." >&2
  failed=$((failed + 1))
fi

echo "Building ..."
dotnet build Slowglow.slnx -c Release --no-restore -v q || stop "the solution does not build."

# Runs a test program with filters and adds up its counts. 2: it ended without a count.
run_tests() {
  local log line code wrong
  log=$(mktemp)
  dotnet exec "$@" -noColor -noLogo 2>&1 | tee "$log"
  code=${PIPESTATUS[0]}
  line=$(grep -E 'Total: [0-9]+, Errors: [0-9]+, Failed: [0-9]+, Skipped: [0-9]+, Not Run: [0-9]+' "$log" | tail -n 1)
  rm -f "$log"
  [ -n "$line" ] || return 2
  count() { sed -E "s/.*$1: ([0-9]+).*/\1/" <<<"$line"; }
  wrong=$(($(count Failed) + $(count Errors)))
  passed=$((passed + $(count Total) - $(count Failed) - $(count Skipped) - $(count 'Not Run')))
  failed=$((failed + wrong))
  if [ "$code" -ne 0 ] && [ "$wrong" -eq 0 ]; then failed=$((failed + 1)); fi
}

# The reference solver is native code that can bring its whole process down, so it has processes of its own, and a second chance when that happens. It runs
# once a process and on one core, so it works beside the others once the browser, which minds its company, has done.
reference='Slowglow.Tests.ReferenceSolver'
units="tests/Slowglow.Tests/bin/Release/net10.0/Slowglow.Tests.dll"
demos=DemoAgreementTests
each='Combo Mixer MonitorAmplifier'
counts=$(mktemp -d)
compare() {
  passed=0
  failed=0
  run_tests "$units" "${@:2}" || run_tests "$units" "${@:2}" || {
    echo "the reference solver brought its process down twice" >&2
    failed=$((failed + 1))
  }
  echo "$passed $failed" >"$counts/$1"
}

compare_demos() {
  local unit
  for unit in $each; do compare "$unit" -class "$reference.$unit$demos"; done
}

begun=
for project in tests/*/; do
  name=$(basename "$project")
  program="$project/bin/Release/net10.0/$name.dll"
  [ -f "$project/$name.csproj" ] || continue
  [ -f "$program" ] || { echo "$name was not built" >&2; failed=$((failed + 1)); continue; }
  echo "Testing $name ..."
  run_tests "$program" -namespace- "$reference" || { echo "$name ended without a count" >&2; failed=$((failed + 1)); }
  if [ -z "$begun" ]; then
    (compare_demos) &
    (compare rest -namespace "$reference" -class- "*$demos") &
    begun=yes
  fi
done

echo "Waiting for the reference solver ..."
wait
for part in $each rest; do
  read -r good bad <"$counts/$part" || { good=0; bad=1; }
  passed=$((passed + good))
  failed=$((failed + bad))
done
rm -rf "$counts"
finish
