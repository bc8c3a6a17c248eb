using Proveout.Engine.Machine;
using Proveout.Workshop;

namespace Proveout.Cli;

/// <summary>Walks a person through the checks of a build. Every answer is in the journal before the next question.</summary>
/// <param name="build">The build.</param>
/// <param name="terminal">Where the person reads and types.</param>
/// <param name="person">Who types.</param>
internal sealed class BenchWalk(OpenedBuild build, Terminal terminal, string person)
{
    private readonly BenchText _text = new(terminal);
    private string? _check;

    /// <summary>Asks until nothing is left, the input ends, or the person quits.</summary>
    public async Task<int> RunAsync(CancellationToken cancellation)
    {
        var state = await build.StateAsync(cancellation);
        _text.Welcome(state);
        _check = CheckToDo(state);
        string? shown = null;
        while (_check is not null)
        {
            if (shown != _check)
                _text.Step(state, state.FindStep(_check)!);
            shown = _check;
            if (await terminal.AskAsync("> ", cancellation) is not { } line || await AnswerAsync(state, line.Trim(), cancellation) is not { } next)
                break;
            state = next;
        }

        _text.Farewell(state);
        return state.Steps.Any(step => step.Status == StepStatus.Failed) ? ExitCode.Findings : ExitCode.Fine;
    }

    // When the plan is done and something is off, the check worth most comes next.
    private static string? CheckToDo(BenchState state) => state.CurrentCheckId ?? state.NextBestCheckId;

    /// <summary>Where the build stands after the answer; null when the person quits.</summary>
    private async Task<BenchState?> AnswerAsync(BenchState state, string line, CancellationToken cancellation)
    {
        var word = line.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var rest = word.Length > 1 ? word[1] : "";
        switch (word.FirstOrDefault(""))
        {
            case "quit":
                return null;
            case "":
            case "help":
                _text.Help(state.FindStep(_check!)!);
                return state;
            case "list":
                _text.List(state);
                return state;
            case "back":
                Back(state);
                return state;
            case "next":
                Next(state);
                return state;
            case "skip":
                return await SkipAsync(state, rest, cancellation);
            case "note":
                return await NoteAsync(state, rest, cancellation);
            default:
                return await ReadAsync(state, line, cancellation);
        }
    }

    private void Back(BenchState state)
    {
        var number = state.FindStep(_check!)!.Number;
        if (number > 1)
            _check = state.Steps[number - 2].Check.Id;
        else
            terminal.Say("This is the first check.");
    }

    private void Next(BenchState state)
    {
        if (state.NextBestCheckId is { } best)
            _check = best;
        else
            terminal.Say("No other check would tell more now. Go on with this one.");
    }

    private async Task<BenchState> SkipAsync(BenchState state, string reason, CancellationToken cancellation)
    {
        var skipped = await build.Workplace.Bench.SkipAsync(state.Build.Id, new SkipRequest(_check!, reason, person, Guid.CreateVersion7()), cancellation);
        if (Accepted(skipped, state, out var after))
            _check = CheckToDo(after);
        return after;
    }

    private async Task<BenchState> NoteAsync(BenchState state, string note, CancellationToken cancellation)
    {
        var noted = await build.Workplace.Bench.NoteDeviationAsync(state.Build.Id, new DeviationRequest(_check!, note, person, Guid.CreateVersion7()), cancellation);
        if (Accepted(noted, state, out var after))
            terminal.Say("Noted.");
        return after;
    }

    private async Task<BenchState> ReadAsync(BenchState state, string typed, CancellationToken cancellation)
    {
        var entered = await build.Workplace.Bench.EnterReadingAsync(state.Build.Id, new ReadingRequest(_check!, typed, person, Guid.CreateVersion7()), cancellation);
        if (!Accepted(entered, state, out var after))
            return after;
        _text.Verdict(after, after.FindStep(_check!)!);
        _check = CheckToDo(after);
        return after;
    }

    private bool Accepted(Outcome<BenchState> outcome, BenchState before, out BenchState after)
    {
        after = outcome.Value ?? before;
        foreach (var diagnostic in outcome.Diagnostics)
            terminal.Say($"{diagnostic.Message} {diagnostic.Mend}".TrimEnd());
        return outcome.Value is not null;
    }
}
