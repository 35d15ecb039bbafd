using System.Collections.Immutable;
using Progression.Core.People;

namespace Progression.Records.Codes;

/// <summary>The codes of public systems that are known here.</summary>
/// <param name="All">The codes in the order of the file.</param>
/// <param name="Notices">What has to be told with the codes of each system, by its URI.</param>
public sealed record StandardCodes(ImmutableArray<StandardCode> All, ImmutableSortedDictionary<string, string> Notices)
{
    /// <summary>The codes under which a reading leaves.</summary>
    public IEnumerable<StandardCode> Sent(string measure, Side side) => All.Where(code => code.IsSent(measure, side));

    /// <summary>These codes with a clinic's own before them.</summary>
    public StandardCodes Under(StandardCodes? own) => own is null ? this : new(own.All.AddRange(All), Notices.SetItems(own.Notices));

    /// <summary>A code by what it is called elsewhere; null when it is not known here.</summary>
    public StandardCode? Find(string system, string code) => All.FirstOrDefault(one => one.System == system && one.Code == code);
}
