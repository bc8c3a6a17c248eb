namespace Proveout.Engine.Electrical;

/// <summary>Finds one sort of harm in one live state of a faulty machine.</summary>
internal interface ILiveRule
{
    /// <summary>Adds what it finds.</summary>
    void Look(LiveLook look);
}
