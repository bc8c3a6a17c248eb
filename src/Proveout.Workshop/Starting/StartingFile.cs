using System.Globalization;
using System.Text;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>A machine file while it is put together: each guess stands in it as a comment above what was guessed.</summary>
/// <param name="catalogue">The part types; an end under a screw of theirs gets a ferrule (DIN 46228, common practice).</param>
internal sealed class StartingFile(Catalogue catalogue)
{
    private readonly StringBuilder _routes = new();
    private readonly StringBuilder _parts = new();
    private readonly List<Func<string>> _conductors = [];
    private readonly Dictionary<string, string> _types = new(StringComparer.Ordinal);
    private string _mains = "";
    private int _wires;

    public void Mains(string words, params string[] guesses)
    {
        foreach (var guess in guesses)
            _mains += $"  {Guess.Opening} {guess}\n";
        _mains += $"  mains: {words}\n";
    }

    public void Route(string name, string words) => _routes.Append("  ").Append(name).Append(": ").Append(words).Append('\n');

    /// <summary>Adds a part.</summary>
    /// <param name="designation">Reference designation.</param>
    /// <param name="type">Type of the catalogue.</param>
    /// <param name="name">What it is for.</param>
    /// <param name="guess">What about it is a guess; empty when nothing is.</param>
    /// <param name="more">Further lines of it, such as values and jumpers.</param>
    public void Part(string designation, string type, string name, string guess = "", params string[] more)
    {
        _types.Add(designation, type);
        _parts.Append(Comment(guess));
        _parts.Append("  ").Append(designation).Append(":\n    type: ").Append(type).Append("\n    name: ").Append(name).Append('\n');
        foreach (var line in more)
            _parts.Append("    ").Append(line).Append('\n');
    }

    /// <summary>Begins a group of conductors.</summary>
    public void Group(string words, string guess = "")
    {
        _conductors.Add(() => $"  # {words}\n{Comment(guess)}");
    }

    public void Wire(string from, string to, Lead lead, string colour)
    {
        var number = ++_wires;
        var route = lead.Route.Length > 0 ? $", route: [{lead.Route}]" : "";
        var flexing = lead.Route.Contains(StartingRoutes.Chain, StringComparison.Ordinal) ? ", flexing: true" : "";
        var insulation = lead.IsMains ? ", insulation: 300 V" : "";
        // A wire may be drawn before the part at its end, so its ends are dressed when all parts are there.
        _conductors.Add(() => string.Create(
            CultureInfo.InvariantCulture,
            $"  W{number}: {{from: {from}, to: {to}, section: {lead.Section} mm2, colour: {colour}, length: {lead.Millimetres} mm{route}{flexing}{insulation}{End("from", from)}{End("to", to)}}}\n"));
    }

    /// <summary>The file; the name is put in by the editor, which knows how to quote it.</summary>
    public string Text(string summary) => $"""
        format: proveout-machine 1
        # Made by the guided start. Each line that begins with "{Guess.Opening.TrimStart('#', ' ')}" is a guess: correct what follows it, or take the line out when it is so.
        machine:
          name: Machine
          summary: {summary}
        {_mains}
        routes:
        {_routes}
        parts:
        {_parts}
        conductors:
        {string.Concat(_conductors.Select(line => line()))}
        """;

    private string End(string which, string terminal)
    {
        var at = terminal.Split('.', 2);
        return catalogue.FindType(_types[at[0]])?.ConnectorOf(at[1])?.Clamp == ClampKind.Screw ? $", {which}-end: ferrule" : "";
    }

    private static string Comment(string guess) => guess.Length > 0 ? $"  {Guess.Opening} {guess}\n" : "";
}
