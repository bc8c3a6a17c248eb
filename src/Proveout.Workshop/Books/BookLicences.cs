using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>The terms that an author gives a book out on.</summary>
internal static class BookLicences
{
    private const string AllRightsKept = "None given. All rights are kept: ask the author before you copy this book or pass it on.";

    // Identifiers of the SPDX licence list that suit texts, drawings and machine files; from memory.
    private static readonly string[] Known =
    [
        "0BSD", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause",
        "CC-BY-3.0", "CC-BY-4.0", "CC-BY-NC-4.0", "CC-BY-NC-ND-4.0", "CC-BY-NC-SA-4.0", "CC-BY-ND-4.0", "CC-BY-SA-3.0", "CC-BY-SA-4.0", "CC0-1.0",
        "CERN-OHL-P-2.0", "CERN-OHL-S-2.0", "CERN-OHL-W-2.0",
        "GFDL-1.3-only", "GFDL-1.3-or-later", "GPL-2.0-only", "GPL-2.0-or-later", "GPL-3.0-only", "GPL-3.0-or-later", "ISC", "LAL-1.3", "LGPL-3.0-only", "LGPL-3.0-or-later",
        "MIT", "MIT-0", "MPL-2.0", "ODbL-1.0", "TAPR-OHL-1.0", "Unlicense",
    ];

    /// <summary>The terms in words; refused when it is a single word that is no identifier known here, because a slip in one would say nothing.</summary>
    public static Outcome<string> Of(string licence)
    {
        var text = licence.Trim();
        if (text.Length == 0)
            return Outcome.Of(AllRightsKept);
        if (Known.FirstOrDefault(known => string.Equals(known, text, StringComparison.OrdinalIgnoreCase)) is { } identifier)
            return Outcome.Of($"{identifier} (identifier of the SPDX licence list).");
        return text.Contains(' ', StringComparison.Ordinal)
            ? Outcome.Of(text)
            : Outcome.Refused<string>(
            [
                new Diagnostic(
                    "unknown-licence",
                    new SourcePlace("--licence", 0, 0),
                    $"`{text}` is not one of the SPDX identifiers known here.",
                    $"Give one of {string.Join(", ", Known)}; or say it in words, such as \"Free to use and to change, for money or not\"."),
            ]);
    }
}
