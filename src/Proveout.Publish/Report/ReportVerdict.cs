namespace Proveout.Publish.Report;

/// <summary>What became of a check.</summary>
public enum ReportVerdict
{
    /// <summary>Not done.</summary>
    NotDone,

    /// <summary>Read as expected.</summary>
    Pass,

    /// <summary>Read otherwise.</summary>
    Fail,

    /// <summary>Read, but the reading says nothing.</summary>
    CannotTell,

    /// <summary>Left out with a reason.</summary>
    LeftOut,
}
