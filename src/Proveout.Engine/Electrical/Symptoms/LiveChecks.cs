using Proveout.Engine.Faults;

namespace Proveout.Engine.Electrical;

/// <summary>What the rules of symptoms and live readings ask of a machine, and how they make checks.</summary>
internal sealed class LiveChecks
{
    private const double SecondsASymptom = 10;
    private const double SecondsAVoltage = 15;

    private readonly Dictionary<(LiveStage? Stage, ControlState State), LiveView> _sound = [];
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    public LiveChecks(LiveModel model)
    {
        Model = model;
        Working =
        [
            .. model.States.Where(state => state.Kind
                is ControlStateKind.Idle or ControlStateKind.Running or ControlStateKind.OneOutput or ControlStateKind.AllOutputs),
        ];
        Resting = Working.Last(state => state.Kind is ControlStateKind.Idle or ControlStateKind.Running);
        Everything = Working[^1];
        Loads = Electrical.Loads.Of(model, [.. Working.Select(state => Sound(state))]);
        Unplugged = UnpluggedStage.Of(model.Context);
    }

    /// <summary>The machine.</summary>
    public LiveModel Model { get; }

    /// <summary>The states in which things work, in the order in which a person meets them.</summary>
    public IReadOnlyList<ControlState> Working { get; }

    /// <summary>Switched on and started, no output commanded.</summary>
    public ControlState Resting { get; }

    /// <summary>Every output commanded.</summary>
    public ControlState Everything { get; }

    /// <summary>What a person sees at work.</summary>
    public IReadOnlyList<ILoad> Loads { get; }

    /// <summary>The stage with the plugs of loads and sensors pulled; null when there are none.</summary>
    public LiveStage? Unplugged { get; }

    /// <summary>The sound machine in a state.</summary>
    public LiveView Sound(ControlState state, LiveStage? stage = null)
    {
        if (!_sound.TryGetValue((stage, state), out var view))
            _sound[(stage, state)] = view = new LiveView(Model.Sound(state, stage));
        return view;
    }

    /// <summary>The first state in which the sound machine surely shows something right; null when none does.</summary>
    public ControlState? FirstRight(Func<LiveView, ReadingInterval> seen) => Working.FirstOrDefault(state => seen(Sound(state)) == Seen.Right);

    /// <summary>Makes a symptom; nothing when the sound machine would not surely show it as it should be.</summary>
    /// <param name="id">Identifier.</param>
    /// <param name="title">What it should be, in a sentence without a full stop.</param>
    /// <param name="state">When.</param>
    /// <param name="why">Why it tells something.</param>
    /// <param name="seen">What is seen of one moment.</param>
    /// <param name="withoutPower">What is seen without power.</param>
    public IEnumerable<LiveObservation> Symptom(
        string id, string title, ControlState state, string why, Func<LiveView, ReadingInterval> seen, ReadingInterval withoutPower)
    {
        ReadingInterval Show(LiveView view) => view.Solution.Settled ? view.Everything(seen, withoutPower) : Seen.CannotTell;
        if (Show(Sound(state)) != Seen.Right)
            yield break;
        yield return new(
            new Check(
                Unique($"symptom-{id}"),
                Faults.Symptom.Kind,
                LiveSetUps.IdOf(Phase.InUse, null, state),
                title,
                $"In this state ({state.Name}): {title}. 1 for yes, 0 for no.",
                [],
                "",
                Seen.Right,
                why,
                SecondsASymptom),
            null,
            state,
            Show);
    }

    /// <summary>Makes a live reading between two nodes.</summary>
    /// <param name="red">Where the red lead goes.</param>
    /// <param name="black">Where the black lead goes.</param>
    /// <param name="stage">What is apart.</param>
    /// <param name="state">When.</param>
    /// <param name="band">What the meter may then show.</param>
    /// <param name="instruction">What to do.</param>
    /// <param name="why">Why it shows that.</param>
    public LiveObservation Reading(
        LivePlace red, LivePlace black, LiveStage? stage, ControlState state, VoltageBand band, string instruction, string why)
    {
        var sound = Sound(state, stage);
        var show = band.Between(red.Node, black.Node, sound);
        return new(
            new Check(
                Unique($"{LiveSetUps.IdOf(Phase.Live, stage, state)}-{red.Id}-{black.Id}{band.Suffix}"),
                "voltage",
                LiveSetUps.IdOf(Phase.Live, stage, state),
                $"{red.Point} to {black.Point}, {band.Words}",
                instruction,
                [red.Point, black.Point],
                "V",
                show(sound),
                why,
                SecondsAVoltage),
            stage,
            state,
            show);
    }

    private string Unique(string plain)
    {
        var tidy = Slug.Of(plain);
        var unique = tidy;
        for (var number = 2; !_taken.Add(unique); number++)
            unique = FormattableString.Invariant($"{tidy}-{number}");
        return unique;
    }
}
