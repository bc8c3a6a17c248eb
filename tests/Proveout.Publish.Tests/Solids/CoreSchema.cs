using System.Xml.Schema;

namespace Proveout.Publish.Tests.Solids;

/// <summary>The rules of the 3MF Core Specification 1.2 (appendix B) for what we write, in XML Schema: names, order, and forms of numbers, without what we do not use.</summary>
internal static class CoreSchema
{
    private const string Text =
        """
        <xs:schema xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02" xmlns:xs="http://www.w3.org/2001/XMLSchema"
            targetNamespace="http://schemas.microsoft.com/3dmanufacturing/core/2015/02" elementFormDefault="qualified">
          <xs:simpleType name="Number"><xs:restriction base="xs:string"><xs:pattern value="[+\-]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][+\-]?[0-9]+)?"/></xs:restriction></xs:simpleType>
          <xs:simpleType name="Id"><xs:restriction base="xs:positiveInteger"><xs:maxExclusive value="2147483648"/></xs:restriction></xs:simpleType>
          <xs:simpleType name="Index"><xs:restriction base="xs:nonNegativeInteger"><xs:maxExclusive value="2147483648"/></xs:restriction></xs:simpleType>
          <xs:element name="model"><xs:complexType><xs:sequence>
            <xs:element name="metadata" minOccurs="0" maxOccurs="unbounded"><xs:complexType mixed="true"><xs:attribute name="name" type="xs:QName" use="required"/></xs:complexType></xs:element>
            <xs:element name="resources"><xs:complexType><xs:sequence>
              <xs:element name="object" minOccurs="0" maxOccurs="unbounded"><xs:complexType><xs:sequence>
                <xs:element name="mesh"><xs:complexType><xs:sequence>
                  <xs:element name="vertices"><xs:complexType><xs:sequence>
                    <xs:element name="vertex" minOccurs="3" maxOccurs="unbounded"><xs:complexType>
                      <xs:attribute name="x" type="Number" use="required"/><xs:attribute name="y" type="Number" use="required"/><xs:attribute name="z" type="Number" use="required"/>
                    </xs:complexType></xs:element>
                  </xs:sequence></xs:complexType></xs:element>
                  <xs:element name="triangles"><xs:complexType><xs:sequence>
                    <xs:element name="triangle" minOccurs="1" maxOccurs="unbounded"><xs:complexType>
                      <xs:attribute name="v1" type="Index" use="required"/><xs:attribute name="v2" type="Index" use="required"/><xs:attribute name="v3" type="Index" use="required"/>
                    </xs:complexType></xs:element>
                  </xs:sequence></xs:complexType></xs:element>
                </xs:sequence></xs:complexType></xs:element>
              </xs:sequence>
              <xs:attribute name="id" type="Id" use="required"/><xs:attribute name="name" type="xs:string"/>
              <xs:attribute name="type"><xs:simpleType><xs:restriction base="xs:string"><xs:enumeration value="model"/></xs:restriction></xs:simpleType></xs:attribute>
              </xs:complexType></xs:element>
            </xs:sequence></xs:complexType></xs:element>
            <xs:element name="build"><xs:complexType><xs:sequence>
              <xs:element name="item" minOccurs="0" maxOccurs="unbounded"><xs:complexType><xs:attribute name="objectid" type="Id" use="required"/></xs:complexType></xs:element>
            </xs:sequence></xs:complexType></xs:element>
          </xs:sequence>
          <xs:attribute name="unit"><xs:simpleType><xs:restriction base="xs:string"><xs:enumeration value="millimeter"/></xs:restriction></xs:simpleType></xs:attribute>
          <xs:anyAttribute namespace="http://www.w3.org/XML/1998/namespace" processContents="skip"/>
          </xs:complexType></xs:element>
        </xs:schema>
        """;

    public static XmlSchemaSet Rules { get; } = Read();

    private static XmlSchemaSet Read()
    {
        var rules = new XmlSchemaSet();
        using var reader = System.Xml.XmlReader.Create(new StringReader(Text));
        rules.Add(null, reader);
        rules.Compile();
        return rules;
    }
}
