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

    private static void WriteEntry(StringBuilder text, Node node, int indent)
    {
        text.Append(' ', indent).Append(KeyOf(node)).Append(':');
        WriteValue(text, node, indent, indent + KeyOf(node).Length + 2);
    }

    private static void WriteValue(StringBuilder text, Node node, int indent, int used)
    {
        var line = OnOneLine(node);
        if (node is ScalarNode || line.Length <= 2 || (indent > 0 && used + line.Length <= LongestLine))
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

    private static string OnOneLine(Node node) => node switch
    {
        MappingNode mapping => $"{{{string.Join(", ", mapping.Entries.Select(entry => $"{KeyOf(entry)}: {OnOneLine(entry)}"))}}}",
        ListNode list => $"[{string.Join(", ", list.Items.Select(OnOneLine))}]",
        ScalarNode { Plain: true } scalar => scalar.Text,
        ScalarNode scalar => ScalarText.Of(scalar.Text),
        _ => throw new InvalidOperationException($"No way to write {node.GetType()}."),
    };

    private static string KeyOf(Node node) => ScalarText.Of(node.Name);
}
