namespace Proveout.Workshop;

/// <summary>A machine that is built in stages.</summary>
/// <param name="Machine">The whole machine.</param>
/// <param name="Checks">How many checks the dead plan of the first stage has.</param>
/// <param name="Minutes">How long they take.</param>
/// <param name="First">The first stage, from which a build is started.</param>
/// <param name="Fittings">What is fitted later, in order.</param>
public sealed record StagesView(MachineSummary Machine, int Checks, double Minutes, MachineSummary First, IReadOnlyList<FittedLater> Fittings);

/// <summary>What is to be done after something was fitted.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Note">What its note says.</param>
/// <param name="Parts">Its parts: designation and name.</param>
/// <param name="Table">The mistakes that fitting it can bring, and the fewest checks that surely catch all of them that can be caught.</param>
/// <param name="Tugs">Joints to tug again, a sentence each.</param>
/// <param name="Again">What else to measure again, a sentence each.</param>
public sealed record FittedLater(
    string Name, string Note, IReadOnlyList<string> Parts, MistakeTable Table, IReadOnlyList<string> Tugs, IReadOnlyList<string> Again)
{
    /// <summary>How many of the mistakes are surely caught.</summary>
    public int Caught => Table.Mistakes.Count(mistake => mistake.CaughtBy.Count > 0);

    /// <summary>Cautions of everything that is done, each once.</summary>
    public IReadOnlyList<string> Cautions => [.. Table.SetUps.SelectMany(setUp => setUp.Cautions).Distinct()];
}
