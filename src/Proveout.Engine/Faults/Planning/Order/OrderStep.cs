namespace Proveout.Engine.Faults;

/// <summary>One check of an ordered list, with what changes for it.</summary>
/// <param name="Check">Index of the check.</param>
/// <param name="Swapped">True when its first point takes the black lead and its second the red one; only where the check does not mind.</param>
/// <param name="MovesRed">True when the red lead goes to another place.</param>
/// <param name="MovesBlack">True when the black lead goes to another place.</param>
/// <param name="ChangesMeter">True when the meter is to be set to another kind of measurement.</param>
/// <param name="ChangesSetUp">True when another set-up begins.</param>
public sealed record OrderStep(int Check, bool Swapped, bool MovesRed, bool MovesBlack, bool ChangesMeter, bool ChangesSetUp)
{
    /// <summary>Number of leads that move.</summary>
    public int LeadMoves => (MovesRed ? 1 : 0) + (MovesBlack ? 1 : 0);

    /// <summary>Which leads stay, in a sentence; empty when none is used, or both move to where the check has them.</summary>
    /// <param name="check">The check of this step.</param>
    public string LeadWords(Check check) =>
        check.Points.Count < 2 || (LeadMoves == 2 && !Swapped) ? ""
        : LeadMoves == 2 ? $"Better the red lead on {check.Points[1]} and the black one on {check.Points[0]}: which is which does not matter here, and one can stay for the next check."
        : LeadMoves == 0 ? "Both leads stay where they are."
        : Swapped ? $"The lead on {check.Points[MovesRed ? 0 : 1]} stays where it is; which lead is which does not matter here."
        : $"The {(MovesRed ? "black" : "red")} lead stays where it is, on {check.Points[MovesRed ? 1 : 0]}.";

    /// <summary>The step from one state of the bench to a check, its leads the way round that moves fewer of them.</summary>
    public static OrderStep From(LeadPlacement state, int index, Check check)
    {
        var asWritten = From(state, index, check, swapped: false);
        if (check.MindsPolarity || check.Points.Count < 2)
            return asWritten;
        var swapped = From(state, index, check, swapped: true);
        return swapped.LeadMoves < asWritten.LeadMoves ? swapped : asWritten;
    }

    /// <summary>The step from one state of the bench to a check.</summary>
    internal static OrderStep From(LeadPlacement state, int index, Check check, bool swapped)
    {
        var another = state.SetUp != check.SetUp;
        var after = state.After(check, swapped);
        return new OrderStep(
            index,
            swapped,
            after.Red is not null && (another || after.Red != state.Red),
            after.Black is not null && (another || after.Black != state.Black),
            check.Points.Count > 0 && state.Kind != check.Kind,
            another);
    }
}
