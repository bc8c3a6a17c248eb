using Proveout.Engine.Faults;
using Proveout.Workshop.Tests.AsWired;
using YamlDotNet.RepresentationModel;

namespace Proveout.Workshop.Tests.Diagnosing;

/// <summary>A case of tests/cases/diagnosis: what was read on a sample machine, and which mistake is behind it.</summary>
internal sealed class VignetteCase
{
    private readonly YamlMappingNode _input;
    private readonly YamlMappingNode _expected;

    public VignetteCase(string name)
    {
        _input = Read(Path.Combine(Folder, name, "input.yaml"));
        _expected = Read(Path.Combine(Folder, name, "expected.yaml"));
        Planned = AsWiredSample.Of(Path.GetFileName(_input["machine"].ToString())).Planned;
        Readings = [.. ((YamlSequenceNode)_input["readings"]).Cast<YamlMappingNode>().Select(ReadingOf)];
        Within = int.Parse(_expected["within"].ToString(), System.Globalization.CultureInfo.InvariantCulture);
    }

    public static string Folder { get; } = Path.Combine(Samples.Root, "tests", "cases", "diagnosis");

    public PlannedMachine Planned { get; }

    public IReadOnlyList<TypedReading> Readings { get; }

    /// <summary>Among how many of the likeliest suspects the mistake must be.</summary>
    public int Within { get; }

    /// <summary>True when a suspect names the mistake that is behind the readings.</summary>
    public bool IsMeantBy(Suspect suspect)
    {
        var mistake = (YamlMappingNode)_expected["suspect"];
        var kinds = Names(mistake, "kinds");
        return suspect.FaultIds.Select(id => id.Split(':', '.')).Any(tokens =>
            (kinds.Length == 0 || kinds.Contains(tokens[0])) && Names(mistake, "concerns").SelectMany(name => name.Split('.')).All(tokens.Contains));
    }

    // Places that metal joins stand for each other, so that a case does not depend on which of them the machine's checks use.
    private TypedReading ReadingOf(YamlMappingNode reading)
    {
        var (red, black, side) = (Names(reading, "red"), Names(reading, "black"), Names(reading, "side"));
        var setUp = Names(reading, "set-up");
        var check = Planned.Dictionary.Checks.FirstOrDefault(check =>
            check.Points.Count == 2
            && (setUp.Length == 0 || setUp.Contains(check.SetUp))
            && (Touches(check, red, 0, side) && Touches(check, black, 1, side) || Touches(check, red, 1, side) && Touches(check, black, 0, side)));
        return check is null
            ? throw new InvalidOperationException($"No check between {string.Join('/', red)} and {string.Join('/', black)}.")
            : new TypedReading(check.Id, reading["reads"].ToString());
    }

    private static bool Touches(Check check, string[] places, int point, string[] side) =>
        check.Points[point] is var touched
        && places.Contains($"{touched.Subject}.{touched.Place}")
        && (side.Length == 0 || side.Contains(touched.Side));

    private static string[] Names(YamlMappingNode node, string key) =>
        !node.Children.TryGetValue(key, out var value) ? []
        : value is YamlSequenceNode list ? [.. list.Select(item => item.ToString())]
        : [value.ToString()];

    private static YamlMappingNode Read(string path)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(File.ReadAllText(path)));
        return (YamlMappingNode)stream.Documents.Single().RootNode;
    }
}
