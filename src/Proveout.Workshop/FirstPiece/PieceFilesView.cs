namespace Proveout.Workshop;

/// <summary>A test piece, ready to be made.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Room">What room and material it takes, in a sentence.</param>
/// <param name="Ring">Size of its double ring, as the field takes it.</param>
/// <param name="Parts">Its parts.</param>
/// <param name="Measures">What is measured at it.</param>
/// <param name="Stl">Bodies in binary STL, in mm.</param>
/// <param name="StlText">Bodies in STL as text, in mm.</param>
/// <param name="ThreeMf">Bodies in 3MF.</param>
/// <param name="Svg">The drawing.</param>
/// <param name="Form">The form for readings.</param>
public sealed record PieceFilesView(
    string Title,
    string Room,
    string Ring,
    IReadOnlyList<PiecePartView> Parts,
    IReadOnlyList<PieceMeasureView> Measures,
    ReadOnlyMemory<byte> Stl,
    string StlText,
    ReadOnlyMemory<byte> ThreeMf,
    string Svg,
    string Form)
{
    /// <summary>File name of the bodies in STL.</summary>
    public const string StlName = "first-piece.stl";

    /// <summary>File name of the bodies in 3MF.</summary>
    public const string ThreeMfName = "first-piece.3mf";

    /// <summary>File name of the drawing.</summary>
    public const string SvgName = "first-piece.svg";

    /// <summary>File name of the form.</summary>
    public const string FormName = "first-piece.csv";

    /// <summary>Media type of 3MF.</summary>
    public static string ThreeMfType => Publish.Solids.ThreeMfFile.MediaType;
}

/// <summary>A part of the piece.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Purpose">What it is for.</param>
public sealed record PiecePartView(string Name, string Purpose);

/// <summary>A numbered measure of the piece.</summary>
/// <param name="Number">Its number on the drawing.</param>
/// <param name="Part">Name of its part.</param>
/// <param name="Words">What to measure.</param>
/// <param name="IsInside">True for inside jaws.</param>
/// <param name="DrawnMm">The length as drawn.</param>
/// <param name="Field">The field that takes its readings.</param>
public sealed record PieceMeasureView(int Number, string Part, string Words, bool IsInside, double DrawnMm, FigureField Field);
