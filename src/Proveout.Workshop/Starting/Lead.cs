namespace Proveout.Workshop;

/// <summary>How a conductor is made and where it runs.</summary>
/// <param name="Section">Cross-section, mm², as written.</param>
/// <param name="Millimetres">Length, mm.</param>
/// <param name="Route">Routes, comma between; empty when it hangs free.</param>
/// <param name="IsMains">True when its insulation is made for mains.</param>
internal sealed record Lead(string Section, int Millimetres, string Route, bool IsMains = false)
{
    /// <summary>
    /// The section of a conductor behind a fuse, in a duct with others: IEC 60204-1:2016 table 6 method B1 with some grouping (table D.2); from 0.75 mm² for power by table 5; thick enough that a lead of some metres loses little (IEC 60204-1 clause 12.5).
    /// The review computes it anew for the machine as it is.
    /// </summary>
    public static string SectionBehind(double fuseAmperes) => fuseAmperes switch
    {
        <= 1 => "0.34",
        <= 3 => "0.75",
        <= 7.5 => "1.5",
        <= 10 => "2.5",
        _ => "4.0",
    };
}
