namespace Proveout.Engine.Faults;

/// <summary>What a reading says of its check.</summary>
public enum Verdict
{
    /// <summary>The reading is what the machine as designed would show.</summary>
    Pass,

    /// <summary>The machine as designed cannot show this reading.</summary>
    Fail,

    /// <summary>The reading says nothing either way.</summary>
    CannotTell,
}
