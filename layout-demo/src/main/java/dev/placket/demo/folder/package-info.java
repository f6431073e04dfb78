/** What a folder of flats says: names, roles, notes and pictures. */
@NullMarked
package dev.placket.demo.folder;

import org.jspecify.annotations.NullMarked;
