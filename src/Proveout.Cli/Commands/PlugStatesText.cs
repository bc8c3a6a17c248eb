using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Shows what a meter reads between two terminals in every state of the plugs.</summary>
internal static class PlugStatesText
{
    public static int Show(Terminal terminal, LoadedMachine machine, Engine.Machine.Outcome<PlugStateAnswer> readings, bool asJson)
    {
        if (readings.Value is not { } answer)
            return terminal.Refuse(readings.Diagnostics, asJson);
        if (asJson)
            terminal.Show(PlugStatesShape.Of(machine.Design.Name, answer), JsonShapes.Spread.PlugStatesShape);
        else
            ShowWords(terminal, answer);
        return answer.FitsNowhere ? ExitCode.Findings : ExitCode.Fine;
    }

    private static void ShowWords(Terminal terminal, PlugStateAnswer answer)
    {
        terminal.Warn(answer.States[0].Both.SetUp.Cautions);
        var sheet = answer.ShownOhms is null
            ? new Sheet("What is plugged", "Red lead", "Black lead", "Resistance", "Diode test")
            : new Sheet("What is plugged", "Red lead", "Black lead", "Resistance", "Diode test", "What was seen");
        foreach (var state in answer.States)
            foreach (var reading in new[] { state.Both.One, state.Both.Other })
            {
                string[] cells = [state.Both.SetUp.Title, reading.Red.ToString(), reading.Black.ToString(), reading.OhmsInWords, reading.DiodeInWords];
                sheet.Add(state.Fits is { } fits ? [.. cells, fits ? "is right here" : "is not right here"] : cells);
            }

        terminal.Show(sheet);
        if (answer.Verdict.Length > 0)
            terminal.Say(answer.Verdict, answer.FitsNowhere ? Meaning.Caution : Meaning.Plain);
        foreach (var reason in answer.States.Select(state => $"{state.Both.SetUp.Title}: {state.Both.One.Reason}"))
            terminal.Say(reason);
    }
}
