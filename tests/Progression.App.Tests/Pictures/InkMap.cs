using Progression.App.Pictures;

namespace Progression.App.Tests.Pictures;

/// <summary>A picture with its inks in words, so that a snapshot holds what colour a terminal may show.</summary>
internal static class InkMap
{
    public static string Of(Picture picture) => string.Join('\n', picture.Rows.Select(Row));

    private static string Row(PictureRow row) => string.Concat(row.Spans.Select(span => span.Ink == Ink.Plain ? span.Text : $"<{span.Ink}:{span.Text}>")).TrimEnd();
}
