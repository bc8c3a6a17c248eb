using System.Globalization;
using System.Text;

namespace Proveout.Workshop;

/// <summary>A machine file while it is put together: each guess stands in it as a comment above what was guessed.</summary>
internal sealed class StartingFile
{
    private readonly StringBuilder _routes = new();
    private readonly StringBuilder _parts = new();
    private readonly StringBuilder _conductors = new();
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
        Comment(_parts, guess);
        _parts.Append("  ").Append(designation).Append(":\n    type: ").Append(type).Append("\n    name: ").Append(name).Append('\n');
        foreach (var line in more)
            _parts.Append("    ").Append(line).Append('\n');
    }

    /// <summary>Begins a group of conductors.</summary>
    public void Group(string words, string guess = "")
    {
        _conductors.Append("  # ").Append(words).Append('\n');
        Comment(_conductors, guess);
    }

    public void Wire(string from, string to, Lead lead, string colour)
    {
        _wires++;
        var route = lead.Route.Length > 0 ? $", route: [{lead.Route}]" : "";
        var flexing = lead.Route.Contains(StartingRoutes.Chain, StringComparison.Ordinal) ? ", flexing: true" : "";
        var insulation = lead.IsMains ? ", insulation: 300 V" : "";
        _conductors.Append(CultureInfo.InvariantCulture, $"  W{_wires}: {{from: {from}, to: {to}, section: {lead.Section} mm2, colour: {colour}, length: {lead.Millimetres} mm{route}{flexing}{insulation}}}\n");
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
        {_conductors}
        """;

    private static void Comment(StringBuilder text, string guess)
    {
        if (guess.Length > 0)
            text.Append("  ").Append(Guess.Opening).Append(' ').Append(guess).Append('\n');
    }
}
