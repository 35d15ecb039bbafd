using ScottPlot;
using SkiaSharp;

namespace Progression.Exchange.Plots;

/// <summary>The letters that travel with the program, whatever font is asked for: plots look the same on a machine without any.</summary>
internal sealed class PlotFont : IFontResolver
{
    /// <summary>What the letters are called.</summary>
    internal const string Name = "DejaVu Sans";

    private static readonly Lazy<PlotFont> Placed = new(Place);

    private readonly Lazy<SKTypeface> _usual = new(() => Read("fonts/DejaVuSans.ttf"));
    private readonly Lazy<SKTypeface> _bold = new(() => Read("fonts/DejaVuSans-Bold.ttf"));

    /// <summary>Sees to it that nothing is drawn with other letters.</summary>
    internal static void Use() => _ = Placed.Value;

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) => CreateTypeface(fontName, weight >= FontWeight.Bold, false);

    /// <inheritdoc/>
    public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => (bold ? _bold : _usual).Value;

    private static PlotFont Place()
    {
        PlotFont font = new();
        Fonts.FontResolvers.Insert(0, font);
        return font;
    }

    private static SKTypeface Read(string name)
    {
        using Stream file = typeof(PlotFont).Assembly.GetManifestResourceStream(name)!;
        return SKTypeface.FromStream(file);
    }
}
