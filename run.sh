#!/usr/bin/env bash
# Opens the bench page on http://127.0.0.1:5080. Stop it with Ctrl+C.
# Words after it go to `slowglow bench`: a job number, a folder with a sheet and readings, --port, --data.
set -eu
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
here=$(cd "$(dirname "$0")" && pwd)
command -v dotnet >/dev/null || { echo "The .NET SDK 10 is missing: https://dotnet.microsoft.com/download" >&2; exit 1; }
dotnet restore "$here/src/Slowglow.Cli" --locked-mode -v q
dotnet build "$here/src/Slowglow.Cli" -c Release --no-restore -v q >&2
exec dotnet exec "$here/src/Slowglow.Cli/bin/Release/net10.0/slowglow.dll" bench "$@"
