using System.IO.MemoryMappedFiles;

namespace Proveout.Fuzz;

/// <summary>Holds the input that is being read in a file that outlives the process, for what ends the process at once, such as a stack that is full.</summary>
public sealed class BlackBox : IDisposable
{
    private const int MostBytes = 32 << 20;

    private readonly MemoryMappedFile _file;
    private readonly MemoryMappedViewAccessor _view;

    /// <summary>Opens the file of a folder; what an earlier run left in it is in <see cref="LeftBehind"/>.</summary>
    public BlackBox(string folder)
    {
        Directory.CreateDirectory(folder);
        _file = MemoryMappedFile.CreateFromFile(Path.Combine(folder, "black-box"), FileMode.OpenOrCreate, null, MostBytes + sizeof(int));
        _view = _file.CreateViewAccessor();
        var length = _view.ReadInt32(0);
        if (length is > 0 and <= MostBytes)
        {
            LeftBehind = new byte[length];
            _view.ReadArray(sizeof(int), LeftBehind, 0, length);
        }
    }

    /// <summary>What was being read when an earlier run ended before its time; null when none did.</summary>
    public byte[]? LeftBehind { get; }

    /// <summary>Takes down an input.</summary>
    public void Take(byte[] input)
    {
        ArgumentNullException.ThrowIfNull(input);
        _view.WriteArray(sizeof(int), input, 0, Math.Min(input.Length, MostBytes));
        _view.Write(0, Math.Min(input.Length, MostBytes));
    }

    /// <summary>Says that the run ended as it should.</summary>
    public void Clear() => _view.Write(0, 0);

    /// <inheritdoc/>
    public void Dispose()
    {
        _view.Dispose();
        _file.Dispose();
    }
}
