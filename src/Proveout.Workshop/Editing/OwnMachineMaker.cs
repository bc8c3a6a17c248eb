using System.Text;
using Proveout.Engine.Machine;

namespace Proveout.Workshop;

/// <summary>Makes machines of one's own.</summary>
internal sealed class OwnMachineMaker(MachineFiles files, MachineShelf shelf, EditPlaces places, TimeProvider clock)
{
    private static readonly EditedThing Name = new(EditedThing.Head, "name");

    public Outcome<MachineSummary> Make(string name, IReadOnlyList<SourceText> texts, string person)
    {
        if (string.IsNullOrWhiteSpace(person))
            return Outcome.Refused<MachineSummary>([Refusals.Empty("The name", "Say who you are.")]);
        if (PlainNames.Of(name).Length == 0)
            return Outcome.Refused<MachineSummary>([EditRefusals.NoName()]);
        var named = MachineText.Apply(texts, [new FieldEdit(Name, [], EditedValue.Of(name.Trim()))]);
        if (named.Value is not { } all)
            return Outcome.Refused<MachineSummary>(named.Diagnostics);
        try
        {
            return MakeIn(FreeFolder(PlainNames.Of(name)), all, person);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return Outcome.Refused<MachineSummary>([EditRefusals.Unwritable(places.OwnFolder)]);
        }
        finally
        {
            shelf.Forget();
        }
    }

    private Outcome<MachineSummary> MakeIn(string folder, IReadOnlyList<SourceText> texts, string person)
    {
        var read = files.Read(texts, folder);
        if (read.Value is not { } machine)
            return Outcome.Refused<MachineSummary>(read.Diagnostics);
        // A folder that is made whole under another name and then given its own is never seen half full.
        var unfinished = Directory.CreateDirectory(Path.Combine(places.OwnFolder, $"{Guid.NewGuid():N}{RevisionFolder.Ending}")).FullName;
        foreach (var text in texts)
            WholeFile.Replace(Path.Combine(unfinished, text.File), stream => stream.Write(Encoding.UTF8.GetBytes(text.Text)));
        Directory.Move(unfinished, folder);
        var revisions = new RevisionFolder(folder);
        revisions.TryAdd(new(
            1,
            RevisionKind.Found,
            0,
            clock.GetUtcNow(),
            person.Trim(),
            "made",
            [machine.Fingerprint, .. StagedMachines.Before(machine).Select(stage => stage.Fingerprint)],
            [.. texts.Select(text => new NamedText(text.File, text.Text))]));
        revisions.MarkInPlace(1);
        return Outcome.Of(machine.Summary);
    }

    private string FreeFolder(string name)
    {
        for (var number = 1; ; number++)
        {
            var free = number == 1 ? name : FormattableString.Invariant($"{name}-{number}");
            var folder = Path.Combine(places.OwnFolder, free);
            if (shelf.Find(free) is null && !Path.Exists(folder) && !Path.Exists(folder + RevisionFolder.Ending))
                return folder;
        }
    }
}
