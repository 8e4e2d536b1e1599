package org.espalier.film.internal.dicom;

/**
 * A file that was read.
 *
 * @param meta the file meta information, group 0002
 * @param dataSet the data set
 * @param transferSyntax how the data set is encoded
 */
public record DicomFile(DataSet meta, DataSet dataSet, TransferSyntax transferSyntax) {}
