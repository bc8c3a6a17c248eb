using System.Globalization;

namespace Proveout.Fuzz;

/// <summary>What a run was asked for.</summary>
/// <param name="Minutes">How long; zero for a number of changes instead.</param>
/// <param name="Mutations">How many changed inputs a target is given in a round.</param>
/// <param name="Seed">Where chance begins.</param>
/// <param name="Targets">Which; all when none is named.</param>
/// <param name="Findings">Folder that failing inputs are written to.</param>
public sealed record FuzzOptions(double Minutes, long Mutations, int Seed, IReadOnlyList<FuzzTarget> Targets, string Findings)
{
    /// <summary>How a run is asked for.</summary>
    public const string Usage = "dotnet run --project tests/Proveout.Fuzz -c Release -- [--minutes N] [--mutations N] [--seed N] [--target NAME]... [--findings FOLDER]";

    /// <summary>Reads the words of a command line; null when they are none.</summary>
    public static FuzzOptions? Of(IReadOnlyList<string> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var options = new FuzzOptions(0, 2000, 1, [], Path.Combine(Path.GetTempPath(), "proveout-fuzz"));
        for (var at = 0; at + 1 < words.Count; at += 2)
        {
            var (name, value) = (words[at], words[at + 1]);
            switch (name)
            {
                case "--minutes" when double.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var minutes):
                    options = options with { Minutes = minutes };
                    break;
                case "--mutations" when long.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var mutations):
                    options = options with { Mutations = mutations };
                    break;
                case "--seed" when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var seed):
                    options = options with { Seed = seed };
                    break;
                case "--target" when Fuzz.Targets.All.FirstOrDefault(target => target.Name == value) is { } target:
                    options = options with { Targets = [.. options.Targets, target] };
                    break;
                case "--findings":
                    options = options with { Findings = value };
                    break;
                default:
                    return null;
            }
        }

        return words.Count % 2 != 0 ? null : options.Targets.Count > 0 ? options : options with { Targets = Fuzz.Targets.All };
    }
}
