#!/usr/bin/env python3
"""What a release consists of, from the lock files and the packages' own descriptions (nuspec).

  release.py licences                                   writes docs/licences.md
  release.py locked                                     fails when a publish restored other packages than the lock files name
  release.py sbom RID VERSION RUNTIME PROGRAM FILE      writes the bill of materials (CycloneDX 1.6, JSON)
  release.py archive FOLDER FILE                        packs a folder: equal folders give equal files
"""
import gzip
import hashlib
import io
import json
import os
import pathlib
import re
import sys
import tarfile
import zipfile

ROOT = pathlib.Path(__file__).resolve().parent.parent
CACHE = pathlib.Path(os.environ.get("NUGET_PACKAGES", pathlib.Path.home() / ".nuget/packages"))
# Two packages name a file instead of an SPDX identifier; both files were read and are the MIT licence.
READ_BY_HAND = {
    "CommandLineParser": "MIT",
    "Microsoft.DotNet.PlatformAbstractions": "MIT",
    # Its README, section "License".
    "StbImageWriteSharp": "public domain",
}
# Only the compiler sees it: PrivateAssets in Directory.Build.props.
BUILD_ONLY = {"Microsoft.CodeAnalysis.BannedApiAnalyzers"}
# Those of the .NET SDK, with its version: they make the program of a system, and are in no lock file.
RUNTIME_TOOLS = ("microsoft.net.illink", "microsoft.netcore.app.", "microsoft.aspnetcore.app.")
SOLVER = "Google.OrTools.runtime."


def locked(*patterns):
    """Packages of lock files: (name, version) to (hash, names it needs)."""
    packages = {}
    for file in sorted(file for pattern in patterns for file in ROOT.glob(pattern)):
        for framework in json.loads(file.read_text())["dependencies"].values():
            for name, entry in framework.items():
                if entry["type"] != "Project":
                    packages[name, entry["resolved"]] = (entry["contentHash"], sorted(entry.get("dependencies", {})))
    return dict(sorted(packages.items(), key=lambda package: [word.lower() for word in package[0]]))


def nuspec(name, version):
    return (CACHE / name.lower() / version / f"{name.lower()}.nuspec").read_text(encoding="utf-8-sig")


def licence(name, version):
    stated = re.search(r'<license type="expression">([^<]+)</license>', nuspec(name, version))
    if stated is None and name not in READ_BY_HAND:
        sys.exit(f"{name} {version} states no SPDX identifier. Read its licence, and name it in READ_BY_HAND of deploy/release.py.")
    return stated[1] if stated else READ_BY_HAND[name]


def table(packages):
    rows = [f"| {name} | {version} | {licence(name, version)} |" for name, version in packages]
    return "\n".join(["| package | version | licence |", "| --- | --- | --- |", *rows])


def write_licences():
    shipped = [package for package in locked("src/*/packages.lock.json") if package[0] not in BUILD_ONLY]
    others = [package for package in locked("src/*/packages.lock.json", "tests/*/packages.lock.json", "bench/*/packages.lock.json") if package not in shipped]
    head = (ROOT / "deploy/licences-head.md").read_text()
    (ROOT / "docs/licences.md").write_text(f"{head}\n## In the program\n\n{table(shipped)}\n\n## Only to build, test and measure it\n\n{table(others)}\n")


def require_locked():
    kept = locked("src/*/packages.lock.json")
    strangers = [
        f"{name} {version}"
        for (name, version), (content, _) in locked("src/*/obj/publish.lock.json").items()
        if not name.lower().startswith(RUNTIME_TOOLS) and kept.get((name, version), ("", []))[0] != content
    ]
    if strangers:
        sys.exit("Restored, but not as the lock files name it: " + ", ".join(strangers))


def component(name, version, spdx):
    return {
        "type": "library",
        "bom-ref": f"pkg:nuget/{name}@{version}",
        "name": name,
        "version": version,
        "licenses": [{"license": {"id": spdx}}],
        "purl": f"pkg:nuget/{name}@{version}",
    }


def write_sbom(rid, release, runtime, program, target):
    packages = {
        name: (version, needs)
        for (name, version), (_, needs) in locked("src/*/packages.lock.json").items()
        if name not in BUILD_ONLY and (not name.startswith(SOLVER) or name == SOLVER + rid)
    }
    # The runtime is no package of ours: the publish brings it as one for each system.
    packs = [f"Microsoft.NETCore.App.Runtime.{rid}", f"Microsoft.AspNetCore.App.Runtime.{rid}"]
    references = {name: f"pkg:nuget/{name}@{entry[0]}" for name, entry in packages.items()}
    root = f"proveout@{release}"
    needed = {need for _, needs in packages.values() for need in needs}
    bill = {
        "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": {
            "component": {
                "type": "application",
                "bom-ref": root,
                "name": "proveout",
                "version": release,
                "hashes": [{"alg": "SHA-256", "content": hashlib.sha256(pathlib.Path(program).read_bytes()).hexdigest()}],
                "properties": [{"name": "proveout:system", "value": rid}],
            }
        },
        "components": [component(name, entry[0], licence(name, entry[0])) for name, entry in packages.items()] + [component(pack, runtime, "MIT") for pack in packs],
        "dependencies": [
            {"ref": root, "dependsOn": sorted([references[name] for name in packages if name not in needed] + [f"pkg:nuget/{pack}@{runtime}" for pack in packs])},
            *({"ref": references[name], "dependsOn": [references[need] for need in entry[1] if need in references]} for name, entry in packages.items()),
        ],
    }
    pathlib.Path(target).write_text(json.dumps(bill, indent=2) + "\n")


def write_archive(folder, target):
    files = sorted(path for path in pathlib.Path(folder).rglob("*") if path.is_file())
    names = [f"{pathlib.Path(folder).name}/{path.relative_to(folder).as_posix()}" for path in files]
    modes = [0o755 if path.name in ("proveout", "proveout.exe") else 0o644 for path in files]
    if target.endswith(".zip"):
        with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as archive:
            for path, name in zip(files, names):
                archive.writestr(zipfile.ZipInfo(name), path.read_bytes(), zipfile.ZIP_DEFLATED)
        return
    with open(target, "wb") as raw, gzip.GzipFile("", "wb", 6, raw, 0) as packed, tarfile.open(fileobj=packed, mode="w", format=tarfile.PAX_FORMAT) as archive:
        for path, name, mode in zip(files, names, modes):
            entry = tarfile.TarInfo(name)
            content = path.read_bytes()
            entry.size, entry.mode = len(content), mode
            archive.addfile(entry, io.BytesIO(content))


COMMANDS = {"licences": (write_licences, 0), "locked": (require_locked, 0), "sbom": (write_sbom, 5), "archive": (write_archive, 2)}

if __name__ == "__main__":
    command, count = COMMANDS.get(sys.argv[1] if len(sys.argv) > 1 else "", (None, -1))
    if command is None or len(sys.argv) != count + 2:
        sys.exit(__doc__)
    command(*sys.argv[2:])
