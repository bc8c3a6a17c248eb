using System.Text;

namespace Proveout.Engine.Machine;

/// <summary>Writes a tree as YAML: sections and long things indented, short things on one line.</summary>
internal static class NodeWriter
{
    private const int LongestLine = 140;
    private const int Indent = 2;

    public static string Write(MappingNode root)
    {
        var text = new StringBuilder();
        foreach (var entry in root.Entries)
            WriteEntry(text, entry, 0);
        return text.ToString();
    }

    /// <summary>A key with its value, indented.</summary>
    /// <param name="entry">The value; it knows its key.</param>
    /// <param name="indent">Blanks before it.</param>
    /// <param name="onLines">True when the keys of the value get lines of their own, however short it is.</param>
    public static string Entry(Node entry, int indent, bool onLines)
    {
        var text = new StringBuilder();
        WriteEntry(text, entry, indent, onLines);
        return text.ToString();
    }

    private static void WriteEntry(StringBuilder text, Node node, int indent, bool onLines = false)
    {
        text.Append(' ', indent).Append(KeyOf(node)).Append(':');
        WriteValue(text, node, indent, indent + KeyOf(node).Length + 2, onLines);
    }

    private static void WriteValue(StringBuilder text, Node node, int indent, int used, bool onLines)
    {
        var line = OnOneLine(node);
        if (node is ScalarNode || line.Length <= 2 || (indent > 0 && !onLines && used + line.Length <= LongestLine))
        {
            text.Append(' ').Append(line).Append('\n');
            return;
        }

        text.Append('\n');
        foreach (var entry in (node as MappingNode)?.Entries ?? [])
            WriteEntry(text, entry, indent + Indent);
        foreach (var item in (node as ListNode)?.Items ?? [])
            text.Append(' ', indent + Indent).Append("- ").Append(OnOneLine(item)).Append('\n');
    }

    /// <summary>A value on one line, in brackets and braces; two values that read the same are written the same.</summary>
    public static string OnOneLine(Node node) => node switch
    {
        MappingNode mapping => $"{{{string.Join(", ", mapping.Entries.Select(entry => $"{KeyOf(entry)}: {OnOneLine(entry)}"))}}}",
        ListNode list => $"[{string.Join(", ", list.Items.Select(OnOneLine))}]",
        ScalarNode { Plain: true } scalar => scalar.Text,
        ScalarNode scalar => ScalarText.Of(scalar.Text),
        _ => throw new InvalidOperationException($"No way to write {node.GetType()}."),
    };

    /// <summary>A key as it is written.</summary>
    public static string KeyOf(Node node) => ScalarText.Of(node.Name);
}
