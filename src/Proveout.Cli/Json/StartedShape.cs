using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>A machine file of the guided start.</summary>
internal sealed record StartedShape(string Format, string Name, string File, int Parts, int Conductors, IReadOnlyList<GuessShape> Guesses, string Text)
{
    public static StartedShape Of(StartedFile machine, string? path) => new(
        "proveout-started 1",
        machine.Name,
        path ?? "",
        machine.Design.Parts.Count,
        machine.Design.Conductors.Count,
        [.. machine.Guesses.Select(guess => new GuessShape(guess.Line, guess.Thing, guess.Words))],
        machine.Text);
}

/// <summary>What nobody said.</summary>
internal sealed record GuessShape(int Line, string Thing, string Words);
