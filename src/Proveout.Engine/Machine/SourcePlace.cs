namespace Proveout.Engine.Machine;

/// <summary>A place in a text file.</summary>
/// <param name="File">File name as the user gave it.</param>
/// <param name="Line">Line, counted from 1; 0 when the whole file is meant.</param>
/// <param name="Column">Column, counted from 1; 0 when the whole line is meant.</param>
public readonly record struct SourcePlace(string File, int Line, int Column)
{
    /// <inheritdoc/>
    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";
}
