using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Mappings;

/// <summary>Columns of the kinds of timeline entry.</summary>
internal sealed class TimelineKindMappings
    : IEntityTypeConfiguration<BookedIn>,
        IEntityTypeConfiguration<ComplaintChanged>,
        IEntityTypeConfiguration<SetupDescribed>,
        IEntityTypeConfiguration<SetupChosen>,
        IEntityTypeConfiguration<ReadingTaken>,
        IEntityTypeConfiguration<ReadingWithdrawn>,
        IEntityTypeConfiguration<StateChanged>,
        IEntityTypeConfiguration<NoteWritten>
{
    private const string Text = "text";
    private const string Setup = "setup";

    public void Configure(EntityTypeBuilder<BookedIn> builder) => builder.Property(e => e.Complaint).HasColumnName(Text);

    public void Configure(EntityTypeBuilder<ComplaintChanged> builder) => builder.Property(e => e.Complaint).HasColumnName(Text);

    public void Configure(EntityTypeBuilder<SetupDescribed> builder)
    {
        builder.Property(e => e.Name).HasColumnName(Setup);
        builder.Property(e => e.Keys).HasColumnName(Text);
    }

    public void Configure(EntityTypeBuilder<SetupChosen> builder) => builder.Property(e => e.Setup).HasColumnName(Setup);

    public void Configure(EntityTypeBuilder<ReadingTaken> builder)
    {
        builder.Property(e => e.Line).HasColumnName(Text);
        builder.Property(e => e.Setup).HasColumnName(Setup);
    }

    public void Configure(EntityTypeBuilder<ReadingWithdrawn> builder) =>
        builder.Property(e => e.Reading).HasColumnName("refers_to");

    public void Configure(EntityTypeBuilder<StateChanged> builder) =>
        builder.Property(e => e.State).HasColumnName(Text).HasConversion<string>();

    public void Configure(EntityTypeBuilder<NoteWritten> builder) => builder.Property(e => e.Text).HasColumnName(Text);
}
