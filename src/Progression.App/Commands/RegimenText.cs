using Progression.Core.Entry;
using Progression.Core.Library;

namespace Progression.App.Commands;

/// <summary>Reads the id of a regimen.</summary>
internal static class RegimenText
{
    internal static Entered<Regimen> Read(string field, string? text, ClinicalLibrary library)
    {
        string id = (text ?? "").Trim(' ');
        if (library.Regimens.TryGetValue(id, out Regimen? regimen))
        {
            return Entered<Regimen>.Good(regimen);
        }

        string hint = NearestWord.To(id, library.Regimens.Keys) is { } near ? $" Did you mean {near}?" : "";
        return Entered<Regimen>.Bad(new Problem(field, "The library has no such regimen." + hint, "one of " + string.Join(", ", library.Regimens.Keys), Found.Of(id)));
    }
}
