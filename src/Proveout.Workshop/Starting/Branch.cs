namespace Proveout.Workshop;

/// <summary>A place where 24 V can be taken.</summary>
/// <param name="Terminal">Where.</param>
/// <param name="FuseAmperes">Rating of the fuse before it, A.</param>
internal readonly record struct Branch(string Terminal, double FuseAmperes)
{
    /// <summary>A lead behind its fuse.</summary>
    public Lead Lead(int millimetres) => new(Workshop.Lead.SectionBehind(FuseAmperes), millimetres, StartingRoutes.Supply);
}
