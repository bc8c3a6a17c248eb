using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;

namespace Proveout.Publish.Solids;

/// <summary>
/// Bodies as a 3MF package (3MF Core Specification 1.2, an open standard): a zip by the Open Packaging Conventions (ISO/IEC 29500-2) with
/// content types, one relationship, and the model as XML in millimetres. The same bodies always give the same bytes.
/// </summary>
public static class ThreeMfFile
{
    /// <summary>Media type of the package (IANA registry).</summary>
    public const string MediaType = "model/3mf";

    private const string ModelNames = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private const string ModelPart = "3D/3dmodel.model";

    private const string ContentTypes =
        """<?xml version="1.0" encoding="UTF-8"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>""";

    private const string Relationships =
        $"""<?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/{ModelPart}" Id="model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>""";

    // The earliest time that a zip can hold: bytes must not hang on the clock.
    private static readonly DateTimeOffset NoTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly XmlWriterSettings Layout = new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = false, NewLineHandling = NewLineHandling.None };

    /// <summary>The package.</summary>
    /// <param name="title">What the bodies are together.</param>
    /// <param name="description">The same at length.</param>
    /// <param name="solids">The bodies; each becomes an object and an item to build, where it stands.</param>
    public static byte[] Of(string title, string description, IReadOnlyList<Solid> solids)
    {
        ArgumentNullException.ThrowIfNull(solids);
        using var bytes = new MemoryStream();
        using (var package = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(package, "[Content_Types].xml", Encoding.UTF8.GetBytes(ContentTypes));
            Add(package, "_rels/.rels", Encoding.UTF8.GetBytes(Relationships));
            Add(package, ModelPart, Model(title, description, solids));
        }

        return bytes.ToArray();
    }

    private static void Add(ZipArchive package, string name, byte[] content)
    {
        var entry = package.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = NoTime;
        using var stream = entry.Open();
        stream.Write(content);
    }

    private static byte[] Model(string title, string description, IReadOnlyList<Solid> solids)
    {
        using var bytes = new MemoryStream();
        using (var xml = XmlWriter.Create(bytes, Layout))
        {
            xml.WriteStartElement("model", ModelNames);
            xml.WriteAttributeString("unit", "millimeter");
            xml.WriteAttributeString("xml", "lang", null, "en-GB");
            Metadata(xml, "Title", title);
            Metadata(xml, "Description", description);
            Metadata(xml, "Application", "Proveout");
            xml.WriteStartElement("resources", ModelNames);
            foreach (var (index, solid) in solids.Index())
                Body(xml, index + 1, solid);
            xml.WriteEndElement();
            xml.WriteStartElement("build", ModelNames);
            foreach (var (index, _) in solids.Index())
            {
                xml.WriteStartElement("item", ModelNames);
                xml.WriteAttributeString("objectid", Whole(index + 1));
                xml.WriteEndElement();
            }

            xml.WriteEndElement();
            xml.WriteEndElement();
        }

        return bytes.ToArray();
    }

    private static void Metadata(XmlWriter xml, string name, string value)
    {
        xml.WriteStartElement("metadata", ModelNames);
        xml.WriteAttributeString("name", name);
        xml.WriteString(PlainText.Clean(value));
        xml.WriteEndElement();
    }

    private static void Body(XmlWriter xml, int id, Solid solid)
    {
        xml.WriteStartElement("object", ModelNames);
        xml.WriteAttributeString("id", Whole(id));
        xml.WriteAttributeString("type", "model");
        xml.WriteAttributeString("name", PlainText.Clean(solid.Name));
        xml.WriteStartElement("mesh", ModelNames);
        xml.WriteStartElement("vertices", ModelNames);
        foreach (var (x, y, z) in solid.Corners)
        {
            xml.WriteStartElement("vertex", ModelNames);
            xml.WriteAttributeString("x", Length(x));
            xml.WriteAttributeString("y", Length(y));
            xml.WriteAttributeString("z", Length(z));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteStartElement("triangles", ModelNames);
        foreach (var (first, second, third) in solid.Triangles)
        {
            xml.WriteStartElement("triangle", ModelNames);
            xml.WriteAttributeString("v1", Whole(first));
            xml.WriteAttributeString("v2", Whole(second));
            xml.WriteAttributeString("v3", Whole(third));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    // A nanometre is enough. Adding zero turns -0 into 0.
    private static string Length(double millimetres) => (Math.Round(millimetres, 6) + 0.0).ToString("0.######", CultureInfo.InvariantCulture);
}
