namespace Proveout.Publish.Drawings;

/// <summary>A wire between two neighbouring layers.</summary>
/// <param name="Left">Its end at the left layer.</param>
/// <param name="Right">Its end at the right layer.</param>
internal sealed record Run(WireEnd Left, WireEnd Right)
{
    /// <summary>Track that it turns on; none when it is straight.</summary>
    public int? Track { get; set; }

    /// <summary>A second track, where it must step aside for another wire.</summary>
    public int? SecondTrack { get; set; }

    public int From => Left.SheetRow;

    public int To => Right.SheetRow;

    public bool IsStraight => From == To;
}
