namespace Proveout.Publish.Books;

/// <summary>
/// Bytes that end: who goes on reading behind them is stopped. The decoder of photographs takes zeros for what is missing, and looks for the next marker
/// among them for ever.
/// </summary>
/// <param name="bytes">The bytes.</param>
internal sealed class EndingStream(byte[] bytes) : MemoryStream(bytes, writable: false)
{
    // Decoders look a little way ahead; the rest of a picture that was cut off is not worth showing.
    private const int MostReadsBehind = 4096;

    private int _readsBehind;

    /// <inheritdoc/>
    public override int ReadByte() => Counted(base.ReadByte(), nothing: -1);

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => count == 0 ? 0 : Counted(base.Read(buffer, offset, count), nothing: 0);

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer) => buffer.IsEmpty ? 0 : Counted(base.Read(buffer), nothing: 0);

    private int Counted(int read, int nothing) =>
        read != nothing || ++_readsBehind <= MostReadsBehind ? read : throw new EndOfStreamException("The picture goes on behind the end of its file.");
}
