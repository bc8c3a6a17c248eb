namespace Proveout.Publish.Drawings;

/// <summary>The two leads of a meter, in the order in which a check names its points.</summary>
internal enum Lead
{
    /// <summary>First point; drawn round.</summary>
    Red,

    /// <summary>Second point; drawn square.</summary>
    Black,
}
