using System.Globalization;
using System.Xml.Linq;
using Progression.Core.Plots;

namespace Progression.Exchange.Plots;

/// <summary>Gives a drawn SVG what makes it readable without eyes and at any size.</summary>
internal static class SvgWords
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The SVG with title, description, a size of its own to be enlarged from, and a usual font where the drawn one is not installed.</summary>
    internal static string Added(string drawn, PlotContent content)
    {
        XDocument document = XDocument.Parse(drawn, LoadOptions.PreserveWhitespace);
        XElement root = document.Root!;
        root.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {root.Attribute("width")!.Value} {root.Attribute("height")!.Value}"));
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-labelledby", "title words");
        root.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", "title"), content.Title),
            new XElement(Svg + "desc", new XAttribute("id", "words"), content.Words));
        foreach (XElement text in root.Descendants(Svg + "text"))
        {
            text.Value = text.Value.Trim();
            text.SetAttributeValue("font-family", $"{PlotFont.Name}, sans-serif");
            foreach (XAttribute list in text.Attributes().Where(one => one.Name.LocalName is "x" or "y").ToList())
            {
                list.Value = list.Value.TrimEnd(' ', ','); // A list that ends with a comma is none by the grammar of SVG.
            }
        }

        Numbered(root);
        root.Descendants(Svg + "defs").Where(defs => !defs.HasElements).ToList().ForEach(defs => defs.Remove());
        return $"{document.Declaration}\n{root.ToString(SaveOptions.DisableFormatting)}\n";
    }

    // The library counts on from one drawing to the next; the same plot is to give the same file.
    private static void Numbered(XElement root)
    {
        Dictionary<string, string> names = [];
        foreach (XElement clip in root.Descendants(Svg + "clipPath"))
        {
            string name = string.Create(CultureInfo.InvariantCulture, $"clip-{names.Count + 1}");
            names[$"url(#{clip.Attribute("id")!.Value})"] = $"url(#{name})";
            clip.SetAttributeValue("id", name);
        }

        foreach (XAttribute use in root.Descendants().Attributes("clip-path"))
        {
            use.Value = names[use.Value];
        }
    }
}
