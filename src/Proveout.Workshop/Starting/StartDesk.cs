using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Begins machines of one's own from what a builder knows, and keeps account of what was guessed.</summary>
/// <param name="files">Reads machines by the catalogue.</param>
/// <param name="editing">Makes and changes machines.</param>
public sealed class StartDesk(MachineFiles files, IEditDesk editing)
{
    /// <summary>Makes a machine of one's own.</summary>
    /// <param name="typed">Answers by the names of <see cref="StartQuestions"/>.</param>
    /// <param name="person">Who makes it.</param>
    /// <param name="cancellation">Gives up before anything is written.</param>
    /// <returns>The machine, or every reason why there is none.</returns>
    public async Task<Outcome<MachineSummary>> MakeAsync(IReadOnlyDictionary<string, string> typed, string person, CancellationToken cancellation)
    {
        var started = await Task.Run(() => StartedMachine.Of(typed, files), cancellation);
        return started.Value is { } machine
            ? await editing.CreateAsync(machine.Name, machine.Text, person, cancellation)
            : Outcome.Refused<MachineSummary>(started.Diagnostics);
    }

    /// <summary>A machine with its guesses; null when there is none of that identifier.</summary>
    public GuessesView? Guesses(string machineId) =>
        editing.View(machineId) is { } view ? new(view.Machine, view.CanEdit, [.. Guess.In(view.Files).Select(guess => new AboutGuess(guess, SectionOf(view.Design, guess.Thing), NameOf(view.Design, guess.Thing)))]) : null;

    /// <summary>Takes guesses out of a machine's files because somebody says that they are so.</summary>
    /// <param name="machineId">The machine.</param>
    /// <param name="confirmed">Which of its guesses.</param>
    /// <param name="person">Who says so.</param>
    public SaveAnswer Confirm(string machineId, IReadOnlyList<Guess> confirmed, string person)
    {
        ArgumentNullException.ThrowIfNull(confirmed);
        if (editing.View(machineId) is not { } view)
            return SaveAnswer.Refuse(0, Refusals.NoSuchMachine(machineId));
        if (confirmed.Count == 0)
            return SaveAnswer.Refuse(view.Revision, new Diagnostic("nothing-chosen", new SourcePlace("guesses", 0, 0), "Nothing is ticked.", "Tick what is so on your machine, then send it."));
        var answer = new SaveAnswer(view.Revision, [], []);
        foreach (var file in confirmed.GroupBy(guess => guess.File))
        {
            if (view.Files.FirstOrDefault(text => text.File == file.Key) is not { } text || Without(text, file) is not { } left)
                return SaveAnswer.Refuse(answer.Revision, new Diagnostic("changed-meanwhile", new SourcePlace(file.Key, 0, 0), "The file was changed meanwhile, and the guesses stand elsewhere now.", "Look at the list again, and tick them there."));
            answer = editing.Save(machineId, new SaveText(answer.Revision, file.Key, left.Text, 0, person));
            if (!answer.IsSaved)
                return answer;
        }

        return answer;
    }

    // From the last line to the first, so that the lines before stay where they are.
    private static SourceText? Without(SourceText text, IEnumerable<Guess> guesses)
    {
        foreach (var guess in guesses.OrderByDescending(guess => guess.Line))
        {
            if (Guess.Without(text, guess.Line, guess.Words) is not { } left)
                return null;
            text = text with { Text = left };
        }

        return text;
    }

    private static string SectionOf(MachineDesign design, string thing) =>
        design.FindPart(thing) is not null ? "parts" : design.Conductors.Any(conductor => conductor.Id == thing) ? "conductors" : "machine";

    private static string NameOf(MachineDesign design, string thing) =>
        design.FindPart(thing) is { } part ? $"{thing}, {part.Name}"
        : design.Conductors.FirstOrDefault(conductor => conductor.Id == thing) is { } conductor ? $"{thing}, from {conductor.From} to {conductor.To}"
        : "Mains";
}
